//! Assembly graphs: what a plan says, and each fault with its line.

#![allow(clippy::unwrap_used, clippy::indexing_slicing)]

use witnessmark_core::assembly::{
    Around, Graph, Item, Plan, PlanFault, Subject, against, plan, read_graph, read_graph_json,
};
use witnessmark_core::list::{
    CatalogueFault, Occasion, Point, Sheet, read_fragment, read_occasions, read_sheet,
};

/// A cylinder with what stands in its way, small enough to plan by hand.
const SMALL: &str = r#"
serves = ["one"]
points = ["complete"]

[[part]]
id = "cap"
component = "engine"

[[part]]
id = "cover"
component = "engine"
after = ["cap"]
points = ["cover-face"]

[[part]]
id = "pipe"
component = "exhaust"
after = ["cap"]

[[part]]
id = "cylinder"
component = "engine"
after = ["cover", "pipe"]

[[part]]
id = "case"
component = "engine"

[[joint]]
id = "cap-push"
parts = ["cap", "cylinder"]
fastener = "push"
points = ["cap-home"]

[[joint]]
id = "cover-nuts"
parts = ["cover", "cylinder"]
fastener = "locknut"
tools = ["spanner"]
points = ["cover-nuts"]

[[joint]]
id = "pipe-springs"
parts = ["pipe", "cylinder"]
fastener = "spring"
tools = ["hook"]

[[joint]]
id = "base-nuts"
parts = ["cylinder", "case"]
after = ["cover"]
fastener = "nut"
band = "base-torque"
count = "base-nuts"
critical = true
renew = ["gasket"]
tools = ["wrench", "spanner"]
points = ["base"]

[[follow-up]]
id = "base-again"
joint = "base-nuts"
by = ["torqued-again"]
after = { tanks = 1, hours = 5 }

[[job]]
id = "cylinder-off"
off = ["cylinder"]
points = ["bore"]
follow-ups = ["base-again"]

[[job]]
id = "torqued-again"
loosened = ["base-nuts"]
"#;

fn graph(text: &str) -> Graph {
    read_graph("g.toml", text).unwrap()
}

fn ids(items: &[Item]) -> Vec<&str> {
    items.iter().map(Item::id).collect()
}

fn planned(jobs: &[&str]) -> Plan {
    plan(&graph(SMALL), jobs).unwrap()
}

#[test]
fn a_part_comes_off_right_after_its_own_joints() {
    let plan = planned(&["cylinder-off"]);
    let wanted = ["cap-push", "cap", "cover-nuts", "cover", "pipe-springs", "pipe", "base-nuts", "cylinder"];
    assert_eq!(ids(&plan.take_off), wanted);
    assert_eq!(plan.take_off[0], Item::Joint("cap-push".into()));
    assert_eq!(plan.take_off[7], Item::Part("cylinder".into()));
}

#[test]
fn a_plan_names_all_that_the_work_asks_for() {
    let plan = planned(&["cylinder-off"]);
    assert_eq!(plan.disturbed.parts, ["cylinder", "pipe", "cover", "cap"]);
    assert_eq!(plan.disturbed.joints, ["base-nuts", "pipe-springs", "cover-nuts", "cap-push"]);
    assert_eq!(plan.renew, ["gasket"]);
    assert_eq!(plan.count_tools, ["wrench", "spanner", "hook"]);
    assert_eq!(plan.independent, ["base-nuts"]);
    // In refit order, then the job's own, then those of every job.
    assert_eq!(plan.points, ["base", "cover-face", "cover-nuts", "cap-home", "bore", "complete"]);
    assert_eq!(plan.without_point, ["pipe-springs"]);
    let torque = &plan.torque[0];
    assert_eq!((torque.joint.as_str(), torque.band.as_str()), ("base-nuts", "base-torque"));
    assert_eq!(torque.count.as_deref(), Some("base-nuts"));
    let later = &plan.follow_ups[0];
    assert_eq!((later.id.as_str(), &later.what), ("base-again", &Subject::Joint("base-nuts".into())));
    assert_eq!((later.after.tanks, later.after.hours), (Some(1), Some(5.0)));
    assert_eq!(later.by, ["torqued-again"]);
}

#[test]
fn a_joint_torqued_in_place_leaves_its_parts_on() {
    let plan = planned(&["torqued-again"]);
    assert_eq!(ids(&plan.take_off), ["cap-push", "cap", "cover-nuts", "cover", "base-nuts"]);
    assert!(plan.follow_ups.is_empty());
}

/// A job that leaves a joint alone on one engine makes nothing due there; a point falls due anyway.
#[test]
fn a_follow_up_of_a_joint_left_alone_is_not_due() {
    let shallow =
        SMALL.to_owned() + "[[job]]\nid = \"cover-off\"\noff = [\"cover\"]\nfollow-ups = [\"base-again\"]\n";
    assert!(plan(&graph(&shallow), &["cover-off"]).unwrap().follow_ups.is_empty());
    let pointed = shallow.replace("joint = \"base-nuts\"", "point = \"base\"");
    let later = plan(&graph(&pointed), &["cover-off"]).unwrap().follow_ups;
    assert_eq!(later[0].what, Subject::Point("base".into()));
}

/// A graph that came as JSON is the same graph.
#[test]
fn json_reads_as_the_file_does() {
    let value: serde_json::Value = toml::from_str(SMALL).unwrap();
    let graph = read_graph_json(&value).unwrap();
    assert_eq!(plan(&graph, &["cylinder-off"]), Ok(planned(&["cylinder-off"])));
    let faults = read_graph_json(&serde_json::json!({ "serves": ["one"], "part": null })).unwrap_err();
    assert!(!faults.is_empty());
}

/// A graph as long as anybody's patience is walked without running out of stack.
#[test]
fn a_long_chain_is_planned() {
    let mut text = "serves = [\"one\"]\n[[part]]\nid = \"p0\"\ncomponent = \"engine\"\n".to_owned();
    let last = 20_000;
    for i in 1..=last {
        text += &format!("[[part]]\nid = \"p{i}\"\ncomponent = \"engine\"\nafter = [\"p{}\"]\n", i - 1);
    }
    text += &format!("[[job]]\nid = \"all\"\noff = [\"p{last}\"]\n");
    let plan = plan(&graph(&text), &["all"]).unwrap();
    assert_eq!(plan.take_off.len(), last + 1);
    assert_eq!((plan.take_off[0].id(), plan.refit[0].id()), ("p0", "p20000"));
}

#[test]
fn an_unknown_job_is_answered_with_those_there_are() {
    let graph = graph(SMALL);
    let known = vec!["cylinder-off".to_owned(), "torqued-again".to_owned()];
    let unknown = PlanFault::UnknownJob { job: "painted".into(), known: known.clone() };
    assert_eq!(plan(&graph, &["cylinder-off", "painted"]), Err(unknown.clone()));
    assert!(unknown.to_string().contains("cylinder-off, torqued-again"));
    assert_eq!(plan(&graph, &[]), Err(PlanFault::NoJob { known }));
}

/// Each edit of the small graph, the line on which its fault must be told, and words of it.
#[test]
fn each_fault_is_told_with_its_line() {
    let line = |needle: &str| SMALL.lines().position(|line| line.contains(needle)).unwrap() + 1;
    let cases: &[(&str, &str, usize, &str)] = &[
        // A dangling name, in each place where one can be.
        ("after = [\"cover\", \"pipe\"]", "after = [\"cover\", \"pope\"]", line("\"pipe\"]"), "`pope`"),
        (
            "parts = [\"pipe\", \"cylinder\"]",
            "parts = [\"pipe\", \"sink\"]",
            line("[\"pipe\", \"cyl"),
            "`sink`",
        ),
        ("after = [\"cover\"]", "after = [\"roof\"]", line("after = [\"cover\"]"), "`roof`"),
        ("off = [\"cylinder\"]", "off = [\"piston\"]", line("off = ["), "`piston`"),
        ("loosened = [\"base-nuts\"]", "loosened = [\"nuts\"]", line("loosened"), "joint `nuts`"),
        ("follow-ups = [\"base-again\"]", "follow-ups = [\"some-day\"]", line("follow-ups"), "`some-day`"),
        ("joint = \"base-nuts\"", "joint = \"bass-nuts\"", line("joint = "), "`bass-nuts`"),
        ("by = [\"torqued-again\"]", "by = [\"torqued\"]", line("by = "), "`torqued`"),
        // What makes no sense.
        (
            "parts = [\"pipe\", \"cylinder\"]",
            "parts = [\"pipe\", \"pipe\"]",
            line("id = \"pipe-springs\""),
            "fewer than two",
        ),
        ("loosened = [\"base-nuts\"]\n", "", line("id = \"torqued-again\""), "disturbs nothing"),
        ("serves = [\"one\"]", "serves = []", 1, "serves no engine"),
        ("after = { tanks = 1, hours = 5 }", "after = { }", line("id = \"base-again\""), "never falls due"),
        (
            "after = { tanks = 1, hours = 5 }",
            "after = { tanks = 0 }",
            line("id = \"base-again\""),
            "never falls due",
        ),
        (
            "after = { tanks = 1, hours = 5 }",
            "after = { hours = nan }",
            line("id = \"base-again\""),
            "never falls due",
        ),
        ("joint = \"base-nuts\"\n", "", line("id = \"base-again\""), "a joint or a point"),
        (
            "joint = \"base-nuts\"",
            "joint = \"base-nuts\"\npoint = \"base\"",
            line("id = \"base-again\""),
            "a joint or a point",
        ),
        ("by = [\"torqued-again\"]", "by = []", line("id = \"base-again\""), "fulfilled by no job"),
        ("by = [\"torqued-again\"]", "by = [\"cylinder-off\"]", line("id = \"base-again\""), "never ends"),
        // Ids.
        ("id = \"pipe\"", "id = \"cover\"", line("id = \"pipe\""), "`cover` is there twice"),
        ("id = \"cap-push\"", "id = \"cap\"", line("id = \"cap-push\""), "`cap` is there twice"),
        ("id = \"torqued-again\"", "id = \"cylinder-off\"", line("id = \"torqued-again\""), "there twice"),
        ("serves = [\"one\"]", "serves = [\"one\", \"one\"]", 2, "`one` is there twice"),
        ("id = \"case\"", "id = \"Case\"", line("id = \"case\""), "`Case` is not an id"),
        ("renew = [\"gasket\"]", "renew = [\"a gasket\"]", line("renew"), "`a gasket` is not an id"),
        // Not the format.
        ("fastener = \"spring\"", "fastener = \"glue\"", line("fastener = \"spring\""), "glue"),
        ("tools = [\"hook\"]", "tool = [\"hook\"]", line("tools = [\"hook\"]"), "tool"),
    ];
    for (from, to, line, words) in cases {
        assert_eq!(SMALL.matches(from).count(), 1, "{from}");
        let faults = read_graph("g.toml", &SMALL.replace(from, to)).unwrap_err();
        let told: Vec<String> = faults.iter().map(ToString::to_string).collect();
        let place = format!("g.toml:{line}: ");
        assert!(told.iter().any(|t| t.starts_with(&place) && t.contains(words)), "{to}: {told:#?}");
        assert!(faults.iter().all(|fault| !fault.hint.is_empty()));
    }
}

#[test]
fn parts_that_wait_for_one_another_are_named_in_a_round() {
    let round = SMALL.replace("id = \"cap\"\n", "id = \"cap\"\nafter = [\"cylinder\"]\n");
    let faults = read_graph("g.toml", &round).unwrap_err();
    // The cap waits for the cylinder, that for the cover, and that for the cap.
    assert_eq!(faults[0].line, 6);
    assert_eq!(faults[0].what, "parts wait for one another: `cap` → `cylinder` → `cover` → `cap`");
    assert_eq!(faults.len(), 1);
    let itself = SMALL.replace("id = \"case\"\n", "id = \"case\"\nafter = [\"case\"]\n");
    let faults = read_graph("g.toml", &itself).unwrap_err();
    assert_eq!(faults[0].what, "parts wait for one another: `case` → `case`");
}

#[test]
fn a_joint_behind_its_own_part_has_no_way_to_it() {
    let behind = SMALL.replace("after = [\"cover\"]", "after = [\"cylinder\"]");
    let faults = read_graph("g.toml", &behind).unwrap_err();
    let line = behind.lines().position(|line| line == "id = \"base-nuts\"").unwrap() + 1;
    assert_eq!((faults.len(), faults[0].line), (1, line));
    assert_eq!(
        faults[0].what,
        "there is no way to joint `base-nuts`: each waits for the next, `base-nuts` → `cylinder` → `base-nuts`"
    );
    // A longer way round: the springs are reached once the cover is off, whose nuts need the pipe off.
    let longer = SMALL
        .replace("fastener = \"spring\"", "after = [\"cover\"]\nfastener = \"spring\"")
        .replace("fastener = \"locknut\"", "after = [\"pipe\"]\nfastener = \"locknut\"");
    let faults = read_graph("g.toml", &longer).unwrap_err();
    assert!(faults[0].what.contains("no way to joint `cover-nuts`"), "{faults:?}");
    assert!(faults[0].what.ends_with("`cover-nuts` → `pipe` → `pipe-springs` → `cover` → `cover-nuts`"));
}

const SHEET: &str = r#"
id = "one"
name = "One"
kind = "two-stroke"
features = ["cover"]
[values.base-nuts]
value = 4
unit = "1"
unconfirmed = "x"
[values.length]
value = 4
unit = "mm"
unconfirmed = "x"
[bands.base-torque]
low = { value = 10, unit = "N.m", unconfirmed = "x" }
[bands.gap]
low = { value = 1, unit = "mm", unconfirmed = "x" }
"#;

fn sheet(text: &str) -> Sheet {
    read_sheet("s.toml", text).unwrap()
}

fn points() -> Vec<Point> {
    let point = |id: &str, component: &str, occasion: &str, when: &str| {
        format!(
            "[[point]]\nid = \"{id}\"\nstation = \"s\"\ncomponent = \"{component}\"\noccasions = [\"{occasion}\"]\nmust = true\n{when}drawing = \"d\"\nfocus = \"f\"\nanswer = [{{ id = \"a\", means = \"serviceable\" }}, {{ id = \"b\", means = \"watch\" }}]\n"
        )
    };
    let mut text = String::new();
    for id in ["cap-home", "cover-face", "cover-nuts", "base", "bore", "complete"] {
        text += &point(id, "engine", "after", "");
    }
    text += &point("pipe-whole", "exhaust", "before", "");
    text += &point("watt", "exhaust", "after", "when = { engine = [\"electric\"] }\n");
    let fragment = read_fragment("p.toml", &text).unwrap();
    fragment.point.into_iter().map(toml::Spanned::into_inner).collect()
}

fn occasions() -> Vec<Occasion> {
    let text = "[[occasion]]\nid = \"before\"\nvalid = \"day\"\n[[occasion]]\nid = \"after\"\nvalid = \"day\"\njob = true\n";
    read_occasions("o.toml", text).unwrap()
}

fn beside(text: &str, sheets: &[Sheet]) -> Vec<CatalogueFault> {
    let (points, occasions) = (points(), occasions());
    let around = Around {
        sheets: sheets.iter().collect(),
        points: points.iter().collect(),
        occasions: occasions.iter().collect(),
    };
    against(&graph(text), "g.toml", text, &around)
}

#[test]
fn what_the_rest_of_the_catalogue_lacks_is_told_with_its_line() {
    assert_eq!(beside(SMALL, &[sheet(SHEET)]), []);
    let line = |needle: &str| SMALL.lines().position(|line| line.contains(needle)).unwrap() + 1;
    let cases: &[(&str, &str, usize, &str)] = &[
        ("band = \"base-torque\"", "band = \"top-torque\"", line("band ="), "`one` has no band `top-torque`"),
        ("band = \"base-torque\"", "band = \"gap\"", line("band ="), "no torque"),
        ("count = \"base-nuts\"", "count = \"nuts\"", line("count ="), "`one` has no value `nuts`"),
        ("count = \"base-nuts\"", "count = \"length\"", line("count ="), "no count"),
        ("serves = [\"one\"]", "serves = [\"one\", \"two\"]", 2, "no data sheet `two`"),
        ("points = [\"bore\"]", "points = [\"bored\"]", line("\"bore\""), "no point `bored`"),
        (
            "points = [\"bore\"]",
            "points = [\"pipe-whole\"]",
            line("\"bore\""),
            "on no list that follows a job",
        ),
        (
            "points = [\"cap-home\"]",
            "points = [\"watt\"]",
            line("id = \"cap-push\""),
            "asked of the engine `one`",
        ),
        ("component = \"exhaust\"", "component = \"sink\"", line("\"exhaust\""), "no component `sink`"),
        (
            "component = \"exhaust\"",
            "component = \"exhaust\"\nfeature = [\"rotary\"]",
            line("\"exhaust\"") + 1,
            "feature `rotary`",
        ),
        ("joint = \"base-nuts\"", "point = \"basis\"", line("joint = "), "no point `basis`"),
    ];
    for (from, to, line, words) in cases {
        let faults = beside(&SMALL.replacen(from, to, 1), &[sheet(SHEET)]);
        assert!(faults.iter().any(|f| f.line == *line && f.what.contains(words)), "{to}: {faults:#?}");
    }
}

/// One file serves an engine with a cover and one without.
#[test]
fn an_engine_without_a_part_has_neither_its_joints_nor_its_jobs() {
    let text = SMALL
        .replace("after = [\"cap\"]\npoints", "feature = [\"cover\"]\nafter = [\"cap\"]\npoints")
        .replace("serves = [\"one\"]", "serves = [\"one\", \"bare\"]")
        + "[[job]]\nid = \"cover-off\"\noff = [\"cover\"]\n";
    let bare = sheet(&SHEET.replace("\"one\"", "\"bare\"").replace("[\"cover\"]", "[]"));
    let fitted = graph(&text).fitted_to(&bare);
    assert!(fitted.part("cover").is_none() && fitted.joint("cover-nuts").is_none());
    assert_eq!(ids(&plan(&fitted, &["torqued-again"]).unwrap().take_off), ["base-nuts"]);
    assert!(matches!(plan(&fitted, &["cover-off"]), Err(PlanFault::UnknownJob { .. })));
    let whole = graph(&text).fitted_to(&sheet(SHEET));
    assert_eq!(
        ids(&plan(&whole, &["cover-off"]).unwrap().take_off),
        ["cap-push", "cap", "cover-nuts", "cover"]
    );
    // What the bare engine's sheet lacks is no fault where the bare engine lacks the joint.
    let counted = text.replace("fastener = \"locknut\"", "count = \"covers\"\nfastener = \"locknut\"");
    let with = SHEET.replace(
        "[values.length]",
        "[values.covers]\nvalue = 2\nunit = \"1\"\nunconfirmed = \"x\"\n[values.length]",
    );
    assert_eq!(beside(&counted, &[sheet(&with), bare.clone()]), []);
    assert!(!beside(&counted, &[sheet(SHEET), bare]).is_empty());
}
