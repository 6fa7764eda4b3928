//! The functions that the calculations are built on, each over a range of inputs.

use crate::List;

pub(crate) fn put(list: &mut List) {
    for step in 1..=40_u32 {
        // 0.137 to 5.48: on both sides of one and of π/2, and no round figures.
        let x = f64::from(step * 137) / 1000.0;
        list.put(format!("square root of {x}"), x.sqrt());
        list.put(format!("exp {x}"), libm::exp(x));
        list.put(format!("log {x}"), libm::log(x));
        list.put(format!("pow {x} 0.47"), libm::pow(x, 0.47));
        list.put(format!("sin {x}"), libm::sin(x));
        list.put(format!("cos {x}"), libm::cos(x));
        list.put(format!("tan {x}"), libm::tan(x));
        list.put(format!("atan2 {x} 1.7"), libm::atan2(x, 1.7));
        list.put(format!("erf {x}"), libm::erf(x));
        list.put(format!("lgamma {x}"), libm::lgamma(x));
    }
}
