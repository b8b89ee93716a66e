//! `put-aside`: closes an inspection without signing; what was answered is kept, unsigned.

use witnessmark_app::Fault;
use witnessmark_core::said::Said;

use crate::reply::Reply;
use crate::session::Session;

#[derive(clap::Args)]
pub struct Args {
    machine: String,
    #[arg(long, value_name = "LIST")]
    occasion: Option<String>,
}

pub fn run(args: Args, session: &mut Session) -> Result<Reply, Fault> {
    let app = session.open()?;
    let machine = app.find_machine(&args.machine)?;
    let mut begun = app.begun(&machine)?;
    if let Some(occasion) = &args.occasion {
        begun.retain(|walk| walk.occasion == *occasion);
    }
    let walk = match begun.as_slice() {
        [] => return Err(Fault::new("nothing-begun")),
        [walk] => walk,
        more => {
            let which: Vec<&str> = more.iter().map(|walk| walk.occasion.as_str()).collect();
            return Err(Fault::new("more-begun").text("which", which.join(", ")));
        }
    };
    let said = Said::new("cli-put-aside").text("list", &walk.words).number("done", walk.done);
    let page = app.put_aside(walk.id.clone())?;
    Reply::done(app.say(&said), &page)
}
