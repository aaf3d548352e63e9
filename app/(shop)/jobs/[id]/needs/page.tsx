import type { Metadata } from 'next';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { costsOf, joinNeeds } from '@/app/_server/needs/join-needs';
import { needChoices } from '@/app/_server/needs/need-choices';
import { readNeeds } from '@/app/_server/needs/read-needs';
import { Code } from '@/app/_ui/code';
import { Empty } from '@/app/_ui/empty';
import { Fold } from '@/app/_ui/fold';
import { KeyBar, LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { Section } from '@/app/_ui/section';
import { jobOfPage } from '@/app/(shop)/jobs/[id]/job-of-page';
import { NeedActs } from '@/app/(shop)/jobs/[id]/needs/_ui/need-acts';
import { NeedCard } from '@/app/(shop)/jobs/[id]/needs/_ui/need-card';
import { type NeedChoices, NeedForm } from '@/app/(shop)/jobs/[id]/needs/_ui/need-form';
import styles from '@/app/(shop)/jobs/[id]/needs/_ui/needs.module.css';
import { PromiseCurveDrawing } from '@/app/(shop)/jobs/[id]/needs/_ui/promise-curve';
import { ReleaseKey } from '@/app/(shop)/jobs/[id]/needs/_ui/release-key';
import { ReserveKey } from '@/app/(shop)/jobs/[id]/needs/_ui/reserve-key';
import { curveView } from '@/app/(shop)/jobs/[id]/needs/curve-view';
import { needView } from '@/app/(shop)/jobs/[id]/needs/need-view';
import { sayAmount, sayCost } from '@/app/(shop)/jobs/[id]/needs/say-need';
import { sayStand } from '@/app/(shop)/jobs/[id]/needs/say-stand';
import { typedNeed } from '@/app/(shop)/jobs/[id]/needs/typed-need';
import { sayDate } from '@/shared/calendar/say-date';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import type { CurrencyCode } from '@/shared/units/currency';

type Params = Promise<{ id: string }>;

export async function generateMetadata({ params }: { params: Params }): Promise<Metadata> {
  return { title: `Needs of ${(await jobOfPage(params)).job.name}` };
}

/** What a job needs against what is there: before a quote, and until it is made. */
export default async function NeedsPage({
  params,
  searchParams,
}: {
  params: Params;
  searchParams: Promise<{ part?: string | string[] }>;
}) {
  const { job, head } = await jobOfPage(params);
  const { book } = await bookForPage();
  const [read, offered] = await Promise.all([readNeeds(book, job.id, head), needChoices(book, job.id)]);
  const { units: prefer, dateOrder: order, today } = head;
  const currency = head.currency as CurrencyCode;
  const isOpen = job.state === 'open';
  const views = joinNeeds(read.needs).map((joined) => needView(joined, read.jobs, head));
  const cost = costsOf(read.needs.map((each) => each.cost));
  const choices: NeedChoices = {
    products: offered.products,
    systems: offered.systems,
    steps: offered.steps.map(({ id, name, part, day }) => ({
      id,
      words: [name, ...(part ? [part] : []), sayDate(day, { order, today })].join(', '),
      part,
    })),
    parts: offered.parts,
    species: offered.species,
    dayOfUse: sayDate(job.dayOfUse, { order, today }),
  };
  const asked = (await searchParams).part;
  const forPart = offered.parts.find(({ id }) => String(id) === asked);
  const anyShort = views.some((view) => view.buy);
  return (
    <Page title="What it needs" context={job.name} back={{ href: `/jobs/${job.id}`, words: job.name }}>
      {views.length === 0 ? (
        <Empty
          title="Nothing is on the list yet."
          toDo="Write below what the job needs, and see at once what is on hand, short and to be bought. A planned pour and finish coats put their own needs here."
        />
      ) : (
        <>
          <p className={styles.lead}>{sayStand(views)}</p>
          <dl className={styles.total}>
            <div>
              <dt>In hand, as paid</dt>
              <dd>{sayCost(cost.inHand, currency)}</dd>
            </div>
            <div>
              <dt>To come, as last paid</dt>
              <dd>{sayCost(cost.toCome, currency)}</dd>
            </div>
            <div>
              <dt>At risk</dt>
              <dd className={cost.atRisk.minor > 0 || !cost.atRisk.known ? styles.risky : undefined}>
                {sayCost(cost.atRisk, currency)}
              </dd>
            </div>
          </dl>
          <div className={styles.cards}>
            {views.map((view) => (
              <NeedCard key={view.id} need={view}>
                {isOpen && (view.hasFree || view.held.length > 0) ? (
                  <div className={styles.acts}>
                    {view.hasFree && views.length > 1 ? (
                      <ReserveKey
                        jobId={job.id}
                        needIds={view.needs.map((each) => each.id)}
                        variant="ghost"
                        words="Promise this"
                      />
                    ) : null}
                    {view.held.length > 0 ? <ReleaseKey jobId={job.id} items={view.held} words="Free it" /> : null}
                  </div>
                ) : null}
                {view.needs.map(({ id, words, planned }) => {
                  const need = read.needs.find((each) => each.need.id === id)?.need;
                  if (planned) {
                    return (
                      <p key={id} className={styles.soft}>
                        {words ? `${words}: from` : 'From'} its pour. Change that, and this follows.
                      </p>
                    );
                  }
                  return isOpen && need ? (
                    <NeedActs
                      key={id}
                      jobId={job.id}
                      prefer={prefer}
                      choices={choices}
                      needId={id}
                      which={words}
                      typed={typedNeed(need, prefer)}
                    />
                  ) : null;
                })}
              </NeedCard>
            ))}
          </div>
        </>
      )}
      {isOpen ? (
        <Section>
          <div id="add" />
          <Fold title="Add what it needs" open={views.length === 0 || forPart !== undefined}>
            <NeedForm
              key={forPart?.id}
              jobId={job.id}
              prefer={prefer}
              choices={choices}
              forPart={forPart && String(forPart.id)}
            />
          </Fold>
        </Section>
      ) : null}
      {read.curves.length > 0 ? (
        <Section title="What can be promised, day by day">
          <div className={styles.curves}>
            {read.curves.map((curve) => (
              <div key={curve.key}>
                <h3 className={styles.curveTitle}>{curve.name}</h3>
                <PromiseCurveDrawing curve={curveView(curve, head)} />
              </div>
            ))}
          </div>
        </Section>
      ) : null}
      {read.loose.length > 0 ? (
        <Section title="Promised, but on no list">
          <ul className={styles.loose}>
            {read.loose.map((each) => (
              <li key={each.label}>
                <b>{each.name}</b>
                <Code>{printOwnLabel(each.label as OwnLabelCode)}</Code>
                {each.unit === 'piece' && each.amount === 1 ? null : (
                  <span>{sayAmount(each.amount, each.unit, prefer, 'down')}</span>
                )}
                {isOpen ? <ReleaseKey jobId={job.id} items={[{ label: each.label }]} words="Free it" /> : null}
              </li>
            ))}
          </ul>
        </Section>
      ) : null}
      {isOpen && read.canRelease ? (
        <Section title="If it comes to nothing">
          <p className={styles.soft}>
            What was not used goes back to the shelf for others. Dropping the job does the same.
          </p>
          <div className={styles.acts}>
            <ReleaseKey jobId={job.id} words="Free everything it is promised" />
          </div>
        </Section>
      ) : null}
      {(isOpen && read.canReserve) || anyShort ? (
        <KeyBar>
          {isOpen && read.canReserve ? <ReserveKey jobId={job.id} words="Promise all that is free" /> : null}
          {anyShort ? (
            <LinkKey variant={read.canReserve ? 'ghost' : 'main'} href="/on-hand/buy">
              What to buy
            </LinkKey>
          ) : null}
        </KeyBar>
      ) : null}
    </Page>
  );
}
