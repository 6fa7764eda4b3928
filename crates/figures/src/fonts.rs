//! The type of all drawings and sheets: Atkinson Hyperlegible, made for legibility; its zero cannot be taken for an O.
//!
//! The files and their licence (SIL Open Font License 1.1) lie in `crates/figures/fonts`.

/// The name of the font family, as pages and drawings call it.
pub const FAMILY: &str = "Atkinson Hyperlegible";

/// Regular, for PDF.
pub const REGULAR_TTF: &[u8] = include_bytes!("../fonts/AtkinsonHyperlegible-Regular.ttf");
/// Bold, for PDF.
pub const BOLD_TTF: &[u8] = include_bytes!("../fonts/AtkinsonHyperlegible-Bold.ttf");
/// Regular, for pages.
pub const REGULAR_WOFF2: &[u8] = include_bytes!("../fonts/AtkinsonHyperlegible-Regular.woff2");
/// Bold, for pages.
pub const BOLD_WOFF2: &[u8] = include_bytes!("../fonts/AtkinsonHyperlegible-Bold.woff2");
/// The licence, to go with every copy of the fonts.
pub const LICENCE: &str = include_str!("../fonts/OFL.txt");
