//! Both databases have the same tables and columns.

use std::collections::BTreeSet;

use crate::common::Place;
use crate::common::postgres::Cluster;

/// PostgreSQL's names of the three types that SQLite's STRICT tables have here.
fn sort(postgres: &str) -> &str {
    match postgres {
        "bigint" => "INTEGER",
        "text" => "TEXT",
        "bytea" => "BLOB",
        other => other,
    }
}

#[test]
fn the_same_tables_and_columns() {
    let place = Place::sqlite();
    drop(place.open());
    let connection = rusqlite::Connection::open(&place.address).unwrap();
    let mut statement = connection
        .prepare(
            "SELECT t.name, c.name, c.type, c.\"notnull\" OR c.pk > 0, t.strict FROM pragma_table_list t, pragma_table_info(t.name) c
             WHERE t.schema = 'main' AND t.name NOT LIKE 'sqlite_%'",
        )
        .unwrap();
    let rows = statement.query_map([], |row| {
        let (table, column, sort): (String, String, String) = (row.get(0)?, row.get(1)?, row.get(2)?);
        assert!(row.get::<_, bool>(4)?, "{table} is not STRICT");
        Ok(format!("{table}|{column}|{sort}|{}", row.get::<_, bool>(3)?))
    });
    let sqlite: BTreeSet<String> = rows.unwrap().map(Result::unwrap).collect();

    let database = Cluster::get().database();
    drop(witnessmark_server::shelf::Shelf::open(&Cluster::get().address(&database)).unwrap());
    let told = Cluster::get().sql(
        &database,
        "SELECT table_name, column_name, data_type, is_nullable FROM information_schema.columns
         WHERE table_schema = 'public' AND table_name <> 'format'",
    );
    let postgres: BTreeSet<String> = told
        .lines()
        .map(|line| {
            let [table, column, kind, nullable] = line.split('|').collect::<Vec<_>>().try_into().unwrap();
            format!("{table}|{column}|{}|{}", sort(kind), nullable == "NO")
        })
        .collect();
    assert!(sqlite.len() > 30, "{sqlite:?}");
    assert_eq!(sqlite, postgres);
}

/// Whatever a school's row is, it says whose it is.
#[test]
fn every_table_has_the_school_first_in_its_key() {
    let place = Place::sqlite();
    drop(place.open());
    let connection = rusqlite::Connection::open(&place.address).unwrap();
    let without: u32 = connection
        .query_row(
            "SELECT count(*) FROM pragma_table_list t WHERE t.schema = 'main' AND t.name NOT LIKE 'sqlite_%'
             AND NOT EXISTS (SELECT 1 FROM pragma_table_info(t.name) c WHERE c.name = 'school' AND c.pk = 1)",
            [],
            |row| row.get(0),
        )
        .unwrap();
    assert_eq!(without, 0);
}
