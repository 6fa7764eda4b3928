//! The service worker with the list of all files in it.

use sha2::{Digest, Sha256};

use crate::Files;
use crate::names::integrity;

/// Where the list goes in `crates/web/page/sw.js`. In quotes, so that the file is JavaScript as it stands.
const LIST: &str = "'@FILES@'";
/// Where the version's name goes.
const VERSION: &str = "@VERSION@";

/// The worker of these files. Each stands in it with its check sum, as browsers hold files to them (W3C Subresource
/// Integrity); the version is the check sum of all.
pub fn worker(template: &str, files: &Files) -> Result<String, String> {
    if [LIST, VERSION].iter().any(|mark| template.matches(mark).count() != 1) {
        return Err(format!("sw.js must hold {LIST} and {VERSION} once each"));
    }
    let list: Vec<String> =
        files.iter().map(|(path, bytes)| format!("  '{path}': '{}',\n", integrity(bytes))).collect();
    let list = list.concat();
    let own = Sha256::digest(format!("{template}{list}"));
    let version: String = own.iter().map(|byte| format!("{byte:02x}")).collect();
    Ok(template.replace(LIST, &format!("{{\n{list}}}")).replace(VERSION, &version))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_change_to_any_file_is_another_version() {
        let made = |page: &str| {
            let files = Files::from([("index.html".to_owned(), page.as_bytes().to_vec())]);
            worker("const FILES = '@FILES@'; const VERSION = '@VERSION@';", &files).unwrap()
        };
        // FIPS 180-4's example: the message "abc"; in base64.
        assert!(made("abc").contains("'index.html': 'sha256-ungWv48Bz+pBQUDeXa4iI7ADYaOWF3qctBD/YfIAFa0=',"));
        let version = |text: &str| text.split("VERSION = ").nth(1).unwrap().to_owned();
        assert_ne!(version(&made("abc")), version(&made("abd")));
        assert_eq!(made("abc"), made("abc"));
    }

    #[test]
    fn a_template_without_its_marks_is_refused() {
        assert!(worker("'@FILES@'", &Files::new()).is_err());
    }
}
