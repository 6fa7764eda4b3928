//! A sheet as one HTML page: it fetches nothing, reads well on a phone, and prints on the paper it was made for.

mod block;
mod css;
mod table;

use figures::fonts;
use words::Language;

use crate::layout::fitted;
use crate::sheet::{Block, Lie, Page, Run, Sheet};
use crate::style::{self, MARGIN};

/// The type of our sheets, as a page carries it with it: weight and WOFF2 file.
pub const TYPE: [Type<'static>; 2] = [(400, fonts::REGULAR_WOFF2), (700, fonts::BOLD_WOFF2)];

/// A weight of the type, as CSS numbers it, and its WOFF2 file.
pub type Type<'a> = (u16, &'a [u8]);

/// The whole page.
#[must_use]
pub fn page(sheet: &Sheet) -> String {
    page_in(sheet, &TYPE)
}

/// The whole page, with this type. With none it is set in the type of where it is opened, so for a page that has ours
/// already; whoever calls this alone does not carry the fonts within.
#[must_use]
pub fn page_in(sheet: &Sheet, with: &[Type<'_>]) -> String {
    let sheet = fitted(sheet.clone());
    let mut out = String::with_capacity(160_000);
    out.push_str("<!doctype html>\n");
    out.push_str(&format!("<html lang=\"{}\">\n<head>\n<meta charset=\"utf-8\">\n", sheet.language.tag()));
    out.push_str("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
    // Nothing on a sheet runs or is fetched, whatever a name may hold.
    out.push_str(
        "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'; \
         font-src data:; img-src data:\">\n",
    );
    out.push_str(&format!("<title>{}</title>\n<style>\n", escape(&sheet.title)));
    for (weight, bytes) in with {
        out.push_str(&font(*weight, bytes));
    }
    css::write(&mut out, &sheet);
    out.push_str("</style>\n</head>\n<body>\n<main>\n");
    let blocks = sheet.pages.iter().flat_map(|page| &page.columns).flat_map(|column| &column.blocks);
    if !blocks.into_iter().any(|block| matches!(block, Block::Title { .. })) {
        // Tags have no head to see; who hears the page is told what it is.
        out.push_str(&format!("<h1 class=\"heard\">{}</h1>\n", escape(&sheet.title)));
    }
    for (number, page) in sheet.pages.iter().enumerate() {
        page_of(&mut out, &sheet, page, number + 1);
    }
    out.push_str("</main>\n</body>\n</html>\n");
    out
}

fn page_of(out: &mut String, sheet: &Sheet, page: &Page, number: usize) {
    let lie = match page.lie {
        Lie::Upright => "upright",
        Lie::OnItsSide => "on-its-side",
    };
    let run = match page.run {
        Run::OnePage => "one",
        Run::MayRunOn => "many",
    };
    let (_, height) = style::paper(sheet.paper, page.lie);
    out.push_str(&format!(
        "<section class=\"page {lie} {run}\" style=\"--scale:{:.3};--high:{:.2}mm\" data-page=\"{number}\">\n",
        page.scale,
        height - 2.0 * MARGIN,
    ));
    out.push_str(&format!("<div class=\"columns c{}\">\n", page.columns.len()));
    for column in &page.columns {
        let lang = language_of(column.language, sheet.language);
        out.push_str(&format!("<div class=\"column\"{lang}>\n"));
        for one in &column.blocks {
            block::write(out, one, style::column_width(sheet.paper, page) / page.scale);
        }
        out.push_str("</div>\n");
    }
    out.push_str("</div>\n");
    out.push_str(&format!("<p class=\"foot\">{}</p>\n</section>\n", escape(&sheet.foot)));
}

/// The language of a part, where it is not that of the whole.
fn language_of(part: Language, whole: Language) -> String {
    if part == whole { String::new() } else { format!(" lang=\"{}\"", part.tag()) }
}

/// A text that cannot be taken for markup, in an element or an attribute.
#[must_use]
pub fn escape(text: &str) -> String {
    let mut safe = String::with_capacity(text.len() + 8);
    for sign in text.chars() {
        match sign {
            '&' => safe.push_str("&amp;"),
            '<' => safe.push_str("&lt;"),
            '>' => safe.push_str("&gt;"),
            '"' => safe.push_str("&quot;"),
            '\'' => safe.push_str("&#39;"),
            // Signs that no page may hold, and those that would turn the text around them over.
            sign if (sign.is_control() && sign != '\n')
                || ('\u{202a}'..='\u{202e}').contains(&sign)
                || ('\u{2066}'..='\u{2069}').contains(&sign) => {}
            sign => safe.push(sign),
        }
    }
    safe
}

/// Bytes as a page carries them with it.
fn data_url(media_type: &str, bytes: &[u8]) -> String {
    use base64::Engine;
    format!("data:{media_type};base64,{}", base64::engine::general_purpose::STANDARD.encode(bytes))
}

/// A font as a page carries it with it.
fn font(weight: u16, bytes: &[u8]) -> String {
    let url = data_url("font/woff2", bytes);
    format!(
        "@font-face{{font-family:'{}';font-weight:{weight};src:url({url}) format('woff2')}}\n",
        fonts::FAMILY
    )
}
