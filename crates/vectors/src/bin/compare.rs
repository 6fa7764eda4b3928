//! Compares the numbers of a WebAssembly module with the native ones, bit for bit.
#![allow(clippy::print_stderr, reason = "a tool for people: what it found goes to standard error")]

use std::error::Error;
use std::process::ExitCode;

use wasmi::{Engine, Instance, Module, Store};

/// Differences shown before the rest are only counted.
const SHOWN: usize = 20;

fn main() -> ExitCode {
    let Some(path) = std::env::args_os().nth(1) else {
        eprintln!("give the path of the WebAssembly module; `cargo xtask wasm` does");
        return ExitCode::from(2);
    };
    let compared = std::fs::read(&path).map_err(Box::from).and_then(|module| differences(&module));
    match compared {
        Ok(differences) if differences.is_empty() => {
            eprintln!("{} numbers are the same, bit for bit", vectors::all().numbers().len());
            ExitCode::SUCCESS
        }
        Ok(differences) => {
            for line in differences.iter().take(SHOWN) {
                eprintln!("{line}");
            }
            eprintln!("{} numbers differ between native and WebAssembly", differences.len());
            ExitCode::FAILURE
        }
        Err(error) => {
            eprintln!("cannot compare: {error}");
            ExitCode::FAILURE
        }
    }
}

/// One line for each number that is not the same.
fn differences(module: &[u8]) -> Result<Vec<String>, Box<dyn Error>> {
    let engine = Engine::default();
    let module = Module::new(&engine, module)?;
    let mut store = Store::new(&engine, ());
    let instance = Instance::new(&mut store, &module, &[])?;
    let count = instance.get_typed_func::<(), u64>(&store, "number_count")?;
    let bits = instance.get_typed_func::<u64, u64>(&store, "number_bits")?;

    let native = vectors::all();
    let numbers = native.numbers();
    let there = count.call(&mut store, ())?;
    if there != numbers.len() as u64 {
        return Err(format!("{} numbers here, {there} there", numbers.len()).into());
    }
    let mut differences = Vec::new();
    for (index, number) in (0..there).zip(numbers) {
        let other = bits.call(&mut store, index)?;
        if other != number.value.to_bits() {
            let wasm = vectors::Number { name: "in WebAssembly".to_owned(), value: f64::from_bits(other) };
            differences.push(format!("{number}\n{wasm}"));
        }
    }
    Ok(differences)
}
