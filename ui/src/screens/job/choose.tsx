// "I worked on it": which jobs were done or will be, several at once.
import { useDraft } from "../../drafts";
import { useLoad } from "../../hooks";
import { Page, Waiting } from "../../parts/page";
import { go, to } from "../../route";
import { t } from "../../words";

/** What is chosen on one screen and planned on the next. */
export const chosenDraft = (machine: string) => `work/${machine}/jobs`;

export function ChooseJobs({ machine }: { machine: string }) {
  const page = useLoad("machine", { id: machine });
  const jobs = useLoad("job-choices", { machine });
  const [chosen, setChosen] = useDraft<string[]>(chosenDraft(machine), []);
  const back = { href: to("machine", machine), words: page.value?.card.name ?? t("to-machine") };
  if (!page.value || !jobs.value)
    return <Waiting screen="work" fault={page.fault ?? jobs.fault} again={() => (page.again(), jobs.again())} back={back} />;
  const open = page.value.job;
  const toggle = (id: string, on: boolean) => setChosen(on ? [...chosen, id] : chosen.filter((one) => one !== id));
  return (
    <Page
      screen="work"
      title={t("work-title")}
      over={page.value.card.name}
      back={back}
      foot={
        open ? (
          <a class="button go" href={to("machine", machine)} data-test="go-on-working">{t("job-deeds")}</a>
        ) : (
          <button
            type="button"
            class="go"
            aria-disabled={chosen.length === 0}
            onClick={() => chosen.length > 0 && go("machine", machine, "work", "plan")}
            data-test="to-plan"
          >
            {chosen.length === 0 ? t("work-choose") : t("work-to-plan", { count: chosen.length })}
          </button>
        )
      }
    >
      {open ? (
        <p class="banner" data-test="work-open">{t("work-open", { title: open.title })}</p>
      ) : (
        <fieldset class="choices">
          <legend class="soft">{t("work-several")}</legend>
          {jobs.value.map((job) => (
            <label key={job.id} class="choice">
              <input
                type="checkbox"
                checked={chosen.includes(job.id)}
                onChange={(event) => toggle(job.id, event.currentTarget.checked)}
                data-test={`job-${job.id}`}
              />
              <span class="grow">
                {job.words} <span class="block soft">{job.what}</span>
              </span>
            </label>
          ))}
        </fieldset>
      )}
    </Page>
  );
}
