//! Every number that a pure crate holds as a constant says where it is from.
//!
//! The rule a machine can keep: a constant with a figure in it has a comment right above it, on its own line, or inside
//! it. Constants that follow one another without a blank line share the comment above the first. Whether the comment
//! names a good source is for the reader to judge.

use super::failure::Failure;
use super::tree::Tree;

/// Constants of pure crates, outside tests, that hold a figure and no comment.
pub fn failures(tree: &Tree) -> Vec<Failure> {
    let mut failures = Vec::new();
    for file in tree.pure_sources() {
        for line in unsourced(&file.production_lines()) {
            failures.push(Failure::new(
                &file.path,
                line,
                "a constant without its source",
                "name the standard, publication or reason in a comment above it (`common practice` and `chosen` are \
                 reasons too, when that is what they are)",
            ));
        }
    }
    failures
}

fn unsourced(lines: &[(usize, &str)]) -> Vec<usize> {
    let mut found = Vec::new();
    // Whether the line just above is a comment, or the end of a constant that has one.
    let mut covered = false;
    let mut index = 0;
    while index < lines.len() {
        let (number, line) = (lines[index].0, lines[index].1.trim());
        if is_constant(line) {
            let end = end_of_item(lines, index);
            let item: Vec<&str> = lines[index..=end].iter().map(|(_, line)| *line).collect();
            let item = item.join("\n");
            covered = covered || item.contains("//");
            if !covered && has_figure(&item) {
                found.push(number);
            }
            index = end;
        } else if line.starts_with("//") {
            covered = true;
        } else if !line.starts_with("#[") {
            covered = false;
        }
        index += 1;
    }
    found
}

/// Whether the line begins a `const` or `static` item; a `const fn` or a `const { }` block is none.
fn is_constant(line: &str) -> bool {
    let mut line = line;
    if let Some(rest) = line.strip_prefix("pub") {
        line = match rest.strip_prefix('(') {
            Some(inside) => inside.split_once(')').map_or("", |(_, after)| after),
            None => rest,
        }
        .trim_start();
    }
    let Some(rest) = line.strip_prefix("const ").or_else(|| line.strip_prefix("static ")) else {
        return false;
    };
    // A name and its type: `NAME: f64`.
    let name: String = rest.chars().take_while(|letter| letter.is_alphanumeric() || *letter == '_').collect();
    !name.is_empty() && rest[name.len()..].starts_with(':')
}

/// The index of the line with the semicolon that ends the item begun at `start`.
fn end_of_item(lines: &[(usize, &str)], start: usize) -> usize {
    let mut depth = 0_i32;
    for (index, (_, line)) in lines.iter().enumerate().skip(start) {
        for letter in code_of(line).chars() {
            match letter {
                '(' | '[' | '{' => depth += 1,
                ')' | ']' | '}' => depth -= 1,
                ';' if depth == 0 => return index,
                _ => {}
            }
        }
    }
    lines.len() - 1
}

/// Whether the item's value, strings and names aside, holds a digit.
fn has_figure(item: &str) -> bool {
    let code: Vec<String> = item.lines().map(code_of).collect();
    let code = code.join("\n");
    let Some((_, value)) = code.split_once('=') else {
        return false;
    };
    let mut before = ' ';
    for letter in value.chars() {
        let begins_a_word = !(before.is_alphanumeric() || before == '_');
        if letter.is_ascii_digit() && begins_a_word {
            return true;
        }
        before = letter;
    }
    false
}

/// The line without its strings and its comment.
fn code_of(line: &str) -> String {
    let mut code = String::new();
    let mut letters = line.chars().peekable();
    let mut in_string = false;
    while let Some(letter) = letters.next() {
        match letter {
            '\\' if in_string => {
                letters.next();
            }
            '"' => in_string = !in_string,
            '/' if !in_string && letters.peek() == Some(&'/') => break,
            _ if !in_string => code.push(letter),
            _ => {}
        }
    }
    code
}

#[cfg(test)]
mod tests {
    use super::*;

    fn check(text: &str, expected: &[usize]) {
        let tree = Tree::of(&[("crates/units/src/a.rs", text)]);
        let found: Vec<usize> = failures(&tree).iter().map(|failure| failure.line).collect();
        assert_eq!(found, expected, "{text}");
    }

    #[test]
    fn a_bare_number_fails() {
        check("pub const FOOT: f64 = 0.3048;", &[1]);
        check("//! Header.\n\npub(crate) const FOOT: f64 = 0.3048;", &[3]);
        check("impl A {\n    const SIZES: [f64; 2] = [\n        1.0,\n        2.0,\n    ];\n}", &[2]);
        check("static FOOT: Length = Length::metres(0.3048);", &[1]);
    }

    #[test]
    fn a_comment_above_beside_or_inside_will_do() {
        check("/// International foot, exact.\npub const FOOT: f64 = 0.3048;", &[]);
        check("/// Exact.\n#[rustfmt::skip]\nconst FOOT: f64 = 0.3048;", &[]);
        check("const FOOT: f64 = 0.3048; // exact", &[]);
        check("const A: [f64; 2] = [\n    // From a table.\n    1.0, 2.0,\n];", &[]);
    }

    #[test]
    fn a_comment_covers_the_block_right_below_it_and_no_more() {
        check("// All exact.\nconst A: f64 = 1.0;\nconst B: f64 = 2.0;\n\nconst C: f64 = 3.0;", &[5]);
    }

    #[test]
    fn what_holds_no_figure_needs_no_source() {
        check("const NAMES: &[&str] = &[\"14 fl oz\"];", &[]);
        check("const KIND: Kind = Kind::Iso10625;", &[]);
        check("const fn feet(value: f64) -> f64 { value * 1.0 }", &[]);
        check("const LENGTHS: [Unit; 2] = [FOOT, INCH];", &[]);
    }

    #[test]
    fn tests_and_worldly_crates_are_free() {
        check("#[cfg(test)]\nmod tests {\n    const A: f64 = 1.0;\n}", &[]);
        let tree = Tree::of(&[("crates/cli/src/main.rs", "const WIDTH: usize = 80;")]);
        assert!(failures(&tree).is_empty());
    }
}
