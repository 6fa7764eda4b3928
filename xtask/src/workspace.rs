//! What `cargo metadata` says about this repository, and no more of it than is used here.

use std::path::{Path, PathBuf};

use serde_json::Value;

use crate::process;

/// The repository and the crates in it.
#[derive(Default)]
pub struct Workspace {
    /// The folder of the top `Cargo.toml`.
    pub root: PathBuf,
    /// Where cargo builds: `target`, unless told otherwise.
    pub target: PathBuf,
    /// The workspace's own crates, by name.
    pub crates: Vec<Package>,
}

/// One package: a workspace crate, or a library that it uses.
#[derive(Clone, Debug, Default)]
pub struct Package {
    pub name: String,
    pub version: String,
    /// The licence expression, as SPDX writes it.
    pub license: Option<String>,
    /// The folder, from the repository's top, with forward slashes; for a library outside it, the full path.
    pub folder: String,
    pub dependencies: Vec<Dependency>,
    pub targets: Vec<Target>,
}

/// One line of a `[dependencies]` table.
#[derive(Clone, Debug)]
pub struct Dependency {
    pub name: String,
    pub kind: DependencyKind,
}

/// Which table a dependency stands in.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DependencyKind {
    Normal,
    Dev,
    Build,
}

/// One thing cargo builds from a package.
#[derive(Clone, Debug)]
pub struct Target {
    /// `lib`, `bin`, `test`, `bench`, `example` or `custom-build`.
    pub kind: String,
}

impl Workspace {
    /// Reads the workspace's own crates. Quick, and needs no network.
    pub fn read() -> Result<Workspace, String> {
        let root = root()?;
        let text =
            process::output_of(process::cargo(&root).args(["metadata", "--format-version=1", "--no-deps"]))?;
        let metadata = parse(&text)?;
        let mut crates = packages(&metadata, &root);
        crates.sort_by(|a, b| a.name.cmp(&b.name));
        let target = PathBuf::from(metadata["target_directory"].as_str().unwrap_or("target"));
        Ok(Workspace { root, target, crates })
    }

    /// Every package in Cargo.lock, the workspace's own included. Fetches those not yet on this machine.
    pub fn all_packages(&self) -> Result<Vec<Package>, String> {
        let text = process::output_of(process::cargo(&self.root).args([
            "metadata",
            "--format-version=1",
            "--all-features",
            "--quiet",
        ]))?;
        Ok(packages(&parse(&text)?, &self.root))
    }

    /// Whether a workspace crate is called so.
    pub fn has(&self, name: &str) -> bool {
        self.crates.iter().any(|package| package.name == name)
    }
}

impl Package {
    /// The path of its Cargo.toml from the repository's top.
    pub fn manifest(&self) -> String {
        format!("{}/Cargo.toml", self.folder)
    }
}

fn root() -> Result<PathBuf, String> {
    // Set by `cargo run`; the one from the build serves when the program is started by hand.
    let own = std::env::var("CARGO_MANIFEST_DIR").unwrap_or(env!("CARGO_MANIFEST_DIR").to_owned());
    Path::new(&own).parent().map(Path::to_path_buf).ok_or_else(|| format!("{own} has no folder above it"))
}

fn parse(text: &str) -> Result<Value, String> {
    serde_json::from_str(text).map_err(|error| format!("cannot read what cargo metadata wrote: {error}"))
}

fn packages(metadata: &Value, root: &Path) -> Vec<Package> {
    list(&metadata["packages"]).iter().map(|value| package(value, root)).collect()
}

fn package(value: &Value, root: &Path) -> Package {
    let manifest = PathBuf::from(text(&value["manifest_path"]));
    let folder = manifest.parent().unwrap_or(&manifest);
    let folder = folder.strip_prefix(root).unwrap_or(folder);
    Package {
        name: text(&value["name"]),
        version: text(&value["version"]),
        license: value["license"].as_str().map(str::to_owned),
        folder: folder.to_string_lossy().replace('\\', "/"),
        dependencies: list(&value["dependencies"])
            .iter()
            .map(|entry| Dependency {
                name: text(&entry["name"]),
                kind: match entry["kind"].as_str() {
                    Some("dev") => DependencyKind::Dev,
                    Some("build") => DependencyKind::Build,
                    _ => DependencyKind::Normal,
                },
            })
            .collect(),
        targets: list(&value["targets"])
            .iter()
            .map(|entry| Target { kind: text(&entry["kind"][0]) })
            .collect(),
    }
}

fn list(value: &Value) -> &[Value] {
    value.as_array().map_or(&[], Vec::as_slice)
}

fn text(value: &Value) -> String {
    value.as_str().unwrap_or_default().to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn reads_this_workspace() {
        let workspace = Workspace::read().unwrap();
        assert!(workspace.has("xtask"));
        let own = workspace.crates.iter().find(|package| package.name == "xtask");
        let own = own.unwrap();
        assert_eq!(own.manifest(), "xtask/Cargo.toml");
        assert!(own.dependencies.iter().any(|dependency| dependency.name == "serde_json"));
        assert!(own.targets.iter().any(|target| target.kind == "bin"));
    }

    #[test]
    fn tells_the_dependency_tables_apart() {
        let metadata = parse(
            r#"{"packages":[{"name":"a","manifest_path":"/r/crates/a/Cargo.toml","dependencies":[
                {"name":"b","kind":null},{"name":"c","kind":"dev"},{"name":"d","kind":"build"}]}]}"#,
        );
        let package = &packages(&metadata.unwrap(), Path::new("/r"))[0];
        assert_eq!(package.folder, "crates/a");
        let kinds: Vec<_> = package.dependencies.iter().map(|one| one.kind).collect();
        use DependencyKind::{Build, Dev, Normal};
        assert_eq!(kinds, [Normal, Dev, Build]);
    }
}
