//! Whether what was made is still that of its sources.

use std::collections::hash_map::DefaultHasher;
use std::hash::{Hash, Hasher};
use std::path::{Path, PathBuf};

/// What stands for the content of a file and of all files in some folders. It only tells one build from another on this
/// machine; that another compiler reckons it otherwise costs a build.
pub fn of(file: &Path, folders: &[PathBuf]) -> Result<String, String> {
    let mut hasher = DefaultHasher::new();
    add(file, &mut hasher)?;
    for folder in folders {
        add_folder(folder, &mut hasher)?;
    }
    Ok(format!("{:016x}", hasher.finish()))
}

fn add_folder(folder: &Path, hasher: &mut DefaultHasher) -> Result<(), String> {
    let entries =
        std::fs::read_dir(folder).map_err(|error| format!("cannot read {}: {error}", folder.display()))?;
    let mut paths: Vec<PathBuf> = entries.flatten().map(|entry| entry.path()).collect();
    paths.sort();
    for path in paths {
        if path.is_dir() { add_folder(&path, hasher)? } else { add(&path, hasher)? }
    }
    Ok(())
}

fn add(file: &Path, hasher: &mut DefaultHasher) -> Result<(), String> {
    let bytes = std::fs::read(file).map_err(|error| format!("cannot read {}: {error}", file.display()))?;
    file.file_name().hash(hasher);
    bytes.hash(hasher);
    Ok(())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_changes_with_any_file_and_with_nothing_else() {
        let folder = std::env::temp_dir().join(format!("xtask-stamp-{}", std::process::id()));
        std::fs::create_dir_all(folder.join("deep")).unwrap();
        let write = |name: &str, text: &str| std::fs::write(folder.join(name), text).unwrap();
        write("module", "1");
        write("deep/page", "1");
        let stamp = || of(&folder.join("module"), &[folder.join("deep")]).unwrap();
        let first = stamp();
        write("module", "1");
        let again = stamp();
        write("deep/page", "2");
        let second = stamp();
        write("deep/more", "");
        let third = stamp();
        write("module", "2");
        let fourth = stamp();
        std::fs::remove_dir_all(&folder).unwrap();
        assert_eq!(first, again);
        let all = std::collections::BTreeSet::from([first, second, third, fourth]);
        assert_eq!(all.len(), 4);
    }
}
