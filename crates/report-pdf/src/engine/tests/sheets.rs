//! Sheets made by hand: every block there is, short and long, with names that mean to do harm.

use figures::{Anchor, Drawing, Node, Point, Role, Shape, TextLine, Weight};
use report::sheet::{AnswerBox, Blank, Block, Column, Lie, Page, Run, Sheet, Sign, Step, Table, Tag, Use};
use words::{Language, Paper};

/// Texts that would be markup, code or a path if anything took them for that.
pub const HARD: [&str; 14] = [
    "#panic(\"no\")",
    "*Lower* _Forty_ = - + /",
    "$ x^2 $ and 5 $/ac",
    "<b>Ana</b> &amp; <script>",
    "\"double\" 'single' `raw` ```block```",
    "C:\\tanks\\blue \\ back",
    "@reference <label> ~",
    "José Ñandú, el aguilón de atrás",
    "14½ fl oz ± 0.3 — “quoted” … 20°",
    "[brackets] {braces} // comment /* comment */",
    "https://willow-bend.example/field?x=1#y",
    "#set page(width: 1cm)",
    "1. not a list",
    "== not a heading",
];

fn t(text: &str) -> String {
    text.to_owned()
}

fn all(texts: &[&str]) -> Vec<String> {
    texts.iter().map(|text| t(text)).collect()
}

/// A small drawing.
pub fn drawing() -> Drawing {
    let line = |x, content: &str| {
        let at = Point::new(x, 40.0);
        let text =
            TextLine { at, anchor: Anchor::Start, size: 12.0, weight: Weight::Bold, content: t(content) };
        Node::new(Role::Text, Shape::Text(text))
    };
    let bar = Shape::Rect { corner: Point::new(10.0, 10.0), width: 680.0, height: 8.0, round: 2.0 };
    Drawing {
        id: t("boom"),
        language: t("en"),
        title: t("Twelve cups under a boom"),
        description: t("Tip 7 is 17 % over; the others are alike."),
        width: 700.0,
        height: 120.0,
        nodes: vec![Node::new(Role::Boom, bar), line(20.0, "tip 1"), line(600.0, "<tip> & \"12\"")],
    }
}

/// One of each block, all with the same text somewhere in it.
pub fn blocks(text: &str) -> Vec<Block> {
    let mut blocks = vec![
        Block::Title {
            main: t("What this sprayer puts out"),
            under: vec![t("Blue mounted boom, 12 tips at 20 in"), t(text)],
            aside: all(&["14 April 2027", "calibrated with R. Alder"]),
        },
        Block::Stop(all(&["The label forbids this wind.", text])),
        Block::Answers(vec![
            answer("it puts out", "14.6", "gal/ac", &["most likely 14.1 to 15.1", "wanted 15"]),
            answer("a full 200 gal tank does, counted to the last acre", "13.7", "acres", &["13.2 to 14.2"]),
            answer("product in a full tank at 2 pt/ac", "3 gal 3 pt", "", &[text]),
        ]),
        Block::Drawing(Box::new(drawing())),
        Block::Heading(t("What to do")),
        Block::Steps {
            from: 3,
            steps: vec![
                step(Sign::Act, "Tip 7 is 17 % over the others.", "Replace it with one of the same size."),
                step(Sign::Settle, "Tip 4 cannot be told from this cup.", text),
                step(Sign::Plain, "", "The other ten lie within 4 % of their average. Nothing to do."),
            ],
        },
        Block::Facts {
            pairs: vec![
                (t("gear, engine"), t("3rd low, 1,700 rpm (PTO 540)")),
                (t("pressure"), t("28 psi at the boom")),
                (t("speed"), t(text)),
            ],
            across: 2,
        },
        Block::LargeFacts {
            pairs: vec![(t("gear"), t("3rd low")), (t("pressure"), t("28 psi")), (t("speed"), t("5.0 mph"))],
            across: 3,
        },
        Block::Table(Table {
            caption: t("What was caught"),
            heads: all(&["tip", "caught", "off"]),
            widths: vec![1, 2, 4],
            rows: vec![all(&["1", "14½ fl oz", "+0.4 %"]), all(&["2", "15 fl oz", text])],
            use_: Use::Read,
        }),
        Block::Table(Table {
            caption: t("To write down what is caught"),
            heads: all(&["tip", "first catch", "second catch"]),
            widths: vec![1, 2, 2],
            rows: vec![all(&["1", "", ""]), all(&["2", "", ""])],
            use_: Use::Write,
        }),
    ];
    blocks.extend(more(text));
    blocks
}

fn more(text: &str) -> Vec<Block> {
    vec![
        Block::Care { lead: t("Take care."), text: format!("The label is the law. {text}") },
        Block::Text(format!("A paragraph in the usual letters. {text}")),
        Block::Small(format!("A paragraph in small letters. {text}")),
        Block::Notes(all(&["The gauge came back to zero.", text])),
        Block::Ticks { items: all(&["no leaks", "fans straight", "all tips alike", text]), across: 2 },
        Block::Blanks {
            blanks: vec![
                blank("driven", "ft"),
                blank("time both ways, added up", "s"),
                blank("pressure", "psi"),
            ],
            across: 2,
        },
        Block::Lines(vec![t("14.6 gal/ac"), t("  = 5,940 × 0.49 / (5.0 × 20)"), t(""), t(text)]),
        Block::Cut(t("cut here")),
    ]
}

/// Tags, with a text in one.
pub fn tags(text: &str) -> Block {
    let tag = |number: &str, what: &str| Tag {
        number: t(number),
        side: t("from the left as the driver sits"),
        wrong: t("Too much"),
        read: t("17 % over the others"),
        what: t(what),
        whose: t("Blue mounted boom\n14 April 2027"),
    };
    Block::Tags(vec![tag("7", "Replace it."), tag("12", text), tag("16", "Clean it.")])
}

fn answer(above: &str, number: &str, unit: &str, below: &[&str]) -> AnswerBox {
    AnswerBox { above: t(above), number: t(number), unit: t(unit), below: all(below) }
}

fn step(sign: Sign, lead: &str, rest: &str) -> Step {
    Step { sign, lead: t(lead), rest: t(rest) }
}

fn blank(label: &str, unit: &str) -> Blank {
    Blank { label: t(label), unit: t(unit) }
}

/// A page of one column.
pub fn page(run: Run, blocks: Vec<Block>) -> Page {
    let column = Column { language: Language::English, blocks };
    Page { lie: Lie::Upright, run, scale: 1.0, columns: vec![column] }
}

/// A sheet of these pages.
pub fn sheet(paper: Paper, language: Language, pages: Vec<Page>) -> Sheet {
    Sheet {
        title: t("What this sprayer puts out"),
        language,
        paper,
        pages,
        foot: t("Evenswath 0.1 · invented example"),
    }
}

/// Every block, on one page and running on, tags, and two languages side by side on paper that lies on its side.
pub fn everything(paper: Paper, language: Language, text: &str) -> Sheet {
    let column = |language, blocks: Vec<Block>| Column { language, blocks };
    let english = column(Language::English, more(text));
    let spanish =
        column(Language::Spanish, vec![Block::Heading(t("Qué hacer")), Block::Text(t("Cámbiela."))]);
    let beside = Page { lie: Lie::OnItsSide, run: Run::OnePage, scale: 1.0, columns: vec![english, spanish] };
    let pages = vec![
        page(Run::OnePage, blocks(text)),
        page(Run::MayRunOn, long()),
        beside,
        page(Run::OnePage, vec![tags(text)]),
    ];
    sheet(paper, language, pages)
}

/// Blocks that take more than one sheet of paper.
pub fn long() -> Vec<Block> {
    let row = |number: usize| vec![number.to_string(), format!("cup {number}"), t("14½ fl oz in 60 s")];
    let table = Table {
        caption: t("Every cup"),
        heads: all(&["tip by number", "cup by name", "what was read"]),
        widths: vec![1, 1, 2],
        rows: (1..=90).map(row).collect(),
        use_: Use::Read,
    };
    let notes = (1..=12).map(|number| format!("note {number}, told so that it takes more than a line of the page when it is read out in full")).collect();
    vec![
        Block::Heading(t("How it was reached")),
        Block::Table(table),
        Block::Heading(t("Notes")),
        Block::Notes(notes),
    ]
}
