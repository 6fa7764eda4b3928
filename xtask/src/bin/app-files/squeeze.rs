//! The files written into their folder, each with its compressed forms beside it where those are smaller.

use std::io::Write;
use std::path::Path;

use brotli::enc::BrotliEncoderParams;
use flate2::Compression;
use flate2::write::GzEncoder;

use crate::Files;

/// The strongest that Brotli has (RFC 7932); it is done once and read often.
const BROTLI_QUALITY: i32 = 11;
/// The largest window that every browser reads: 16 MiB, as a power of two (RFC 7932, 9.1).
const BROTLI_WINDOW: i32 = 24;

/// Writes them in place of what stood in the folder, and says how large they are.
pub fn write(files: &Files, folder: &Path) -> Result<(), String> {
    if folder.exists() {
        std::fs::remove_dir_all(folder)
            .map_err(|error| format!("cannot empty {}: {error}", folder.display()))?;
    }
    std::fs::create_dir_all(folder).map_err(|error| format!("cannot make {}: {error}", folder.display()))?;
    let (mut plain, mut sent) = (0, 0);
    for (path, bytes) in files {
        let forms = [(".br", brotli(bytes)?), (".gz", gzip(bytes)?)];
        put(folder, path, bytes)?;
        let mut least = bytes.len();
        for (ending, form) in forms.iter().filter(|(_, form)| form.len() < bytes.len()) {
            put(folder, &format!("{path}{ending}"), form)?;
            least = least.min(form.len());
        }
        plain += bytes.len();
        sent += least;
        eprintln!("{:>9} {:>9}  {path}", bytes.len(), least);
    }
    eprintln!("{plain:>9} {sent:>9}  bytes in all: as they are, and as they are sent");
    Ok(())
}

fn put(folder: &Path, path: &str, bytes: &[u8]) -> Result<(), String> {
    let path = folder.join(path);
    std::fs::write(&path, bytes).map_err(|error| format!("cannot write {}: {error}", path.display()))
}

fn brotli(bytes: &[u8]) -> Result<Vec<u8>, String> {
    let params = BrotliEncoderParams {
        quality: BROTLI_QUALITY,
        lgwin: BROTLI_WINDOW,
        size_hint: bytes.len(),
        ..BrotliEncoderParams::default()
    };
    let mut out = Vec::new();
    brotli::BrotliCompress(&mut &*bytes, &mut out, &params).map_err(|error| format!("Brotli: {error}"))?;
    Ok(out)
}

/// No time stands in it, so that the same bytes come out the same.
fn gzip(bytes: &[u8]) -> Result<Vec<u8>, String> {
    let mut out = GzEncoder::new(Vec::new(), Compression::best());
    let written = out.write_all(bytes).and_then(|()| out.finish());
    written.map_err(|error| format!("gzip: {error}"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_pressed_comes_out_as_it_went_in() {
        let text = b"a row of cups under a boom, ".repeat(200);
        let mut out = Vec::new();
        brotli::BrotliDecompress(&mut &*brotli(&text).unwrap(), &mut out).unwrap();
        assert_eq!(out, text);
        let mut out = Vec::new();
        let pressed = gzip(&text).unwrap();
        std::io::Read::read_to_end(&mut flate2::read::GzDecoder::new(&*pressed), &mut out).unwrap();
        assert_eq!(out, text);
        assert_eq!(gzip(&text).unwrap(), pressed);
    }
}
