//! What a person calls a thing, made into its id.

use witnessmark_app::Fault;

/// The id of the one thing that is meant: by its id, its name, or the beginning of either that
/// fits one thing only. `known`: ids and names.
pub fn one(what: &str, known: Vec<(String, String)>) -> Result<String, Fault> {
    let wanted = what.trim().to_lowercase();
    // The whole goes before a beginning: one thing may be called as another begins.
    let whole = |(id, name): &&(String, String)| *id == wanted || name.to_lowercase() == wanted;
    let begins = |(id, name): &&(String, String)| {
        !wanted.is_empty() && (id.starts_with(&wanted) || name.to_lowercase().starts_with(&wanted))
    };
    let mut found: Vec<&(String, String)> = known.iter().filter(whole).collect();
    if found.is_empty() {
        found = known.iter().filter(begins).collect();
    }
    let listed = |things: &mut dyn Iterator<Item = &(String, String)>| {
        things.map(|(id, name)| format!("{name} ({id})")).collect::<Vec<_>>().join(", ")
    };
    match found.as_slice() {
        [(id, _)] => Ok(id.clone()),
        [] if known.is_empty() => Err(Fault::new("none-to-name").text("what", what)),
        [] => Err(Fault::new("not-named").text("what", what).text("known", listed(&mut known.iter()))),
        more => {
            let which = listed(&mut more.iter().copied());
            Err(Fault::new("ambiguous-name").text("what", what).text("which", which))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn find(what: &str) -> Result<String, &'static str> {
        let known = [("0a1b", "Wrench 2"), ("0a2c", "Wrench 21"), ("ff00", "Big one")];
        let known = known.map(|(id, name)| (id.to_owned(), name.to_owned()));
        one(what, known.to_vec()).map_err(|fault| fault.kind)
    }

    #[test]
    fn one_is_found_by_id_name_or_beginning() {
        assert_eq!(find("FF").as_deref(), Ok("ff00"));
        assert_eq!(find("big").as_deref(), Ok("ff00"));
        assert_eq!(find("0a1b").as_deref(), Ok("0a1b"));
        assert_eq!(find("wrench 2").as_deref(), Ok("0a1b"), "the whole name, not a beginning");
    }

    #[test]
    fn what_fits_two_or_none_is_not_guessed() {
        assert_eq!(find("wrench"), Err("ambiguous-name"));
        assert_eq!(find("0a"), Err("ambiguous-name"));
        assert_eq!(find(""), Err("not-named"));
        assert_eq!(one("any", Vec::new()).map_err(|fault| fault.kind), Err("none-to-name"));
    }
}
