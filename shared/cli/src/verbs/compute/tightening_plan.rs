//! `tightening-plan`: which nut next, and what the tool is set to.

use serde::Deserialize;
use serde_json::{Value, json};
use witnessmark_core::torque::{
    Adapter, Between, DragRule, Layout, Plan, Stage, Step, Tool, Wanted, default_stages,
};
use witnessmark_core::units::{Quantity, Unit};

use super::bands::si_band;
use super::{Computation, Wrong, read, si};

pub const IT: Computation = Computation {
    name: "tightening-plan",
    example: r#"{"nuts": 4, "layout": "circle", "stages": [{"value": 50, "unit": "%"}, {"value": 100, "unit": "%"}, "check"], "band": {"low": {"value": 125, "unit": "lbf.in"}, "high": {"value": 130, "unit": "lbf.in"}}, "tool": {"marked": {"low": {"value": 40, "unit": "lbf.in"}, "high": {"value": 200, "unit": "lbf.in"}}, "deviation": {"value": 4, "unit": "%"}}}"#,
    run,
};

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Input {
    nuts: Option<usize>,
    #[serde(default)]
    layout: Lie,
    stages: Option<Vec<Round>>,
    band: Between<Quantity>,
    tool: Option<Tool>,
    drag: Option<Quantity>,
    #[serde(default)]
    rule: DragRule,
    adapter: Option<Adapter>,
}

/// How the nuts lie: `"circle"`, or `{"rows": 2, "columns": 3}`.
#[derive(Default, Deserialize)]
#[serde(untagged)]
enum Lie {
    #[default]
    Unsaid,
    Named(Name),
    Grid {
        rows: usize,
        columns: usize,
    },
}

#[derive(Deserialize)]
#[serde(rename_all = "kebab-case")]
enum Name {
    Circle,
}

/// A round over all nuts: a share of the full torque (`0.5`, or 50 %), or `"check"`.
#[derive(Deserialize)]
#[serde(untagged)]
enum Round {
    Share(f64),
    Ratio(Quantity),
    Named(Check),
}

#[derive(Deserialize)]
#[serde(rename_all = "kebab-case")]
enum Check {
    Check,
}

fn run(input: Value) -> Result<Value, Wrong> {
    let Input { nuts, layout, stages, band, tool, drag, rule, adapter } = read(input)?;
    let layout = lie(nuts, &layout)?;
    let stages =
        stages.map_or_else(|| Ok(default_stages()), |rounds| rounds.into_iter().map(stage).collect())?;
    let wanted = Wanted { band, drag, rule, adapter };
    let Plan { steps, spread } = Plan::new(layout, &stages, &wanted, tool.as_ref())?;
    let steps = steps.into_iter().map(step).collect::<Result<Vec<_>, _>>()?;
    let spread_si = spread.map(si_band).transpose()?;
    Ok(json!({ "steps": steps, "spread": spread, "spread_si": spread_si }))
}

fn lie(nuts: Option<usize>, layout: &Lie) -> Result<Layout, Wrong> {
    match *layout {
        Lie::Unsaid | Lie::Named(Name::Circle) => {
            let nuts = nuts.ok_or_else(|| Wrong("nuts: say how many there are".into()))?;
            Ok(Layout::Circle { nuts })
        }
        Lie::Grid { rows, columns } => {
            let grid = Layout::Grid { rows, columns };
            let fits = nuts.is_none_or(|nuts| grid.nuts() == Ok(nuts));
            if fits { Ok(grid) } else { Err(Wrong("nuts: must be rows times columns of the layout".into())) }
        }
    }
}

fn stage(round: Round) -> Result<Stage, Wrong> {
    Ok(match round {
        Round::Share(share) => Stage::Share(share),
        Round::Ratio(ratio) => Stage::Share(ratio.to(Unit::One)?.value),
        Round::Named(Check::Check) => Stage::Check,
    })
}

fn step(step: Step) -> Result<Value, Wrong> {
    let Step { stage, nut, setting } = step;
    Ok(json!({ "stage": stage, "nut": nut, "setting": setting, "setting_si": si(setting)? }))
}
