import type { Metadata } from 'next';
import { aboutProgram } from '@/app/_server/book/about-program';
import { bookForPage } from '@/app/_server/book/book-for-page';
import { readServing, servingNow } from '@/app/_server/book/serving';
import { readHouse } from '@/app/_server/cuts/read-house';
import { feedSecret } from '@/app/_server/feed/feed-secret';
import { readClosedDays } from '@/app/_server/timeline/read-closed-days';
import { nameOfVisitor, namesOnDevice } from '@/app/_server/who/who-is-writing';
import { BellSetting } from '@/app/_ui/bell/bell-setting';
import { Code } from '@/app/_ui/code';
import { Facts } from '@/app/_ui/facts';
import { LinkKey } from '@/app/_ui/keys';
import { Page } from '@/app/_ui/page';
import { Section } from '@/app/_ui/section';
import { ClosedDaysForm } from '@/app/(shop)/settings/_ui/closed-days';
import { DeviceForm } from '@/app/(shop)/settings/_ui/device-form';
import { FeedForm } from '@/app/(shop)/settings/_ui/feed-form';
import { HouseForm } from '@/app/(shop)/settings/_ui/house-form';
import { NetworkForm } from '@/app/(shop)/settings/_ui/network-form';
import { Proof } from '@/app/(shop)/settings/_ui/proof';
import styles from '@/app/(shop)/settings/_ui/settings.module.css';
import { WorkshopForm } from '@/app/(shop)/settings/_ui/workshop-form';
import { DATA, FONTS, LIBRARIES, type Notice } from '@/app/(shop)/settings/notices';
import { printLengthExact } from '@/shared/units/print-length-exact';

export const metadata: Metadata = { title: 'Settings' };

export default async function SettingsPage() {
  const { book, head } = await bookForPage();
  const [serving, names, otherwise, secret] = await Promise.all([
    readServing(),
    namesOnDevice(),
    nameOfVisitor(),
    feedSecret(book),
  ]);
  const about = aboutProgram();
  const house = await readHouse(book);
  const closed = await readClosedDays(book.read);
  const sizes = {
    houseLengthNm: printLengthExact(house.lengthNm, head.units),
    houseWidthNm: printLengthExact(house.widthNm, head.units),
    kerfNm: printLengthExact(house.kerfNm, head.units),
  };
  const { name, timeZone, units, dateOrder } = head;
  return (
    <Page title="Settings" context={head.demo ? `${name}, a demo` : name}>
      <Section title="Places, labels, woods">
        <div className={styles.keys}>
          <LinkKey href="/places" variant="ghost">
            Places
          </LinkKey>
          <LinkKey href="/stocktake" variant="ghost">
            Take stock
          </LinkKey>
          <LinkKey href="/labels" variant="ghost">
            Print labels
          </LinkKey>
          <LinkKey href="/species" variant="ghost">
            Species
          </LinkKey>
        </div>
      </Section>
      <div className={styles.two}>
        <Section title="This workshop">
          <WorkshopForm key={`${name} ${timeZone} ${units} ${dateOrder}`} now={{ name, timeZone, units, dateOrder }} />
          <p className={styles.soft}>Costs are kept in {head.currency}, chosen when the book was begun. That stays.</p>
        </Section>
        <Section title="This device">
          <DeviceForm key={`${names.who} ${names.device}`} now={names} otherwise={otherwise} />
        </Section>
      </div>
      <Section title="Closed days">
        <ClosedDaysForm
          key={closed.weekdays.join()}
          weekdays={closed.weekdays}
          ranges={closed.ranges}
          today={head.today}
          order={head.dateOrder}
        />
      </Section>
      <Section title="Offcuts and the saw">
        <HouseForm key={JSON.stringify(sizes)} now={sizes} prefer={head.units} />
      </Section>
      <div className={styles.two}>
        <Section title={<span id="calendar">Calendar</span>}>
          <p>
            Lifts, demoulding, coats, deliveries, due days, last good days, retests, samples and moisture readings, as
            whole days in any calendar program that subscribes to an address (iCalendar, RFC 5545).
          </p>
          <p className={styles.soft}>
            The phone must reach this computer: in the workshop’s network, once the book is opened to it below. It looks
            again about every hour while it is there. A calendar service on the internet cannot reach it.
          </p>
          <FeedForm key={secret ?? 'none'} secret={secret} />
        </Section>
        <Section title={<span id="bell">Bell</span>}>
          <BellSetting />
        </Section>
      </div>
      <div className={styles.two}>
        <Section title="Who can reach the book">
          <NetworkForm now={servingNow()} next={serving.network} />
        </Section>
        <Section title="Proof">
          <p>
            Adds up every entry again, from the first, and compares the result with what the pages show: quantities,
            places, holds, labels, reversals, and the database’s own check.
          </p>
          <Proof />
        </Section>
      </div>
      <Section title="About">
        <div className={styles.facts}>
          <Facts
            facts={[
              { term: 'Program', value: `Flitchbook ${about.version}` },
              {
                term: 'The book',
                value: (
                  <>
                    In the folder <Code>{about.folder}</Code>, on the computer that runs the program: the database and
                    the photos. Copy that whole folder while the program is stopped, and you have a backup.
                  </>
                ),
              },
              {
                term: 'Another book',
                value: (
                  <>
                    Stop the program and start it with another folder: <Code>FLITCHBOOK_DATA=my-shop npm start</Code>.
                    Or move the folder away, and the next start begins an empty one.
                  </>
                ),
              },
              ...(head.demo
                ? [{ term: 'This one', value: 'A demo: every person, maker, slab and tin in it is invented.' }]
                : []),
            ]}
          />
        </div>
      </Section>
      <Section title="Work of others">
        <Notices title="Typefaces" notices={FONTS} />
        <Notices title="Data" notices={DATA} />
        <Notices title="Open-source libraries" notices={LIBRARIES} />
        <p className={styles.soft}>
          The full text of each licence is in the program’s folder, beside the package it belongs to.
        </p>
      </Section>
    </Page>
  );
}

function Notices({ title, notices }: { title: string; notices: readonly Notice[] }) {
  return (
    <div className={styles.notice}>
      <h3>{title}</h3>
      <ul>
        {notices.map(({ name, licence, by }) => (
          <li key={name}>
            {name}: {licence}. {by.replace(/\.$/, '')}.
          </li>
        ))}
      </ul>
    </div>
  );
}
