//! The table of symptoms, causes and checks: the words to a person, everything as JSON.

use calibration::symptoms::{
    Brings, Check, Grade, Symptom, Trouble, all_brings, check_row, check_said, trouble_row,
};
use serde_json::{Map, Value, json};
use units::Pressure;
use words::Words;

use super::symptom::all;
use crate::out::{Answer, number};

/// All of it.
pub fn table(working: Option<Pressure>, words: &Words) -> Answer {
    let symptom = |one: &Symptom| json!({"code": one.word(), "text": words.phrase(&one.said())});
    let cause = |one: &Trouble| {
        let row = trouble_row(*one);
        json!({
            "code": one.word(),
            "text": words.phrase(&one.said()),
            "action": words.phrase(&one.remedy()),
            "common": number(row.common.share()),
            "source": row.source,
        })
    };
    let brings = |row: &Brings| {
        json!({
            "symptom": row.symptom.word(),
            "cause": row.trouble.word(),
            "how_often": number(row.how.share()),
            "source": row.source,
        })
    };
    let check = |one: &Check| {
        let row = check_row(*one);
        let share = |(trouble, grade): &(Trouble, Grade)| (trouble.word().to_string(), number(grade.share()));
        json!({
            "check": one.word(),
            "before": row.before.iter().map(|before| before.word()).collect::<Vec<_>>(),
            "text": all(words, &check_said(*one, working)),
            "minutes": number(row.minutes),
            "costs": row.costs.word(),
            "risk": row.risk.word(),
            "yes": row.yes.iter().map(share).collect::<Map<String, Value>>(),
            "otherwise": number(row.otherwise.share()),
            "source": row.source,
        })
    };
    let mut answer = Answer::of(json!({
        "symptoms": Symptom::ALL.iter().map(symptom).collect::<Vec<_>>(),
        "causes": Trouble::ALL.iter().map(cause).collect::<Vec<_>>(),
        "brings": all_brings().iter().map(brings).collect::<Vec<_>>(),
        "checks": Check::ALL.iter().map(check).collect::<Vec<_>>(),
    }));
    answer.head(words.label("line-symptoms"));
    for one in Symptom::ALL {
        answer.verbatim(format!("  {:16} {}", one.word(), words.phrase(&one.said())));
    }
    answer.plain("");
    answer.plain(words.label("line-symptoms_how"));
    answer
}
