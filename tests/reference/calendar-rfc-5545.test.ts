import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import type { FeedEvent } from '@/app/_server/feed/feed-event';
import { writeCalendar } from '@/app/_server/feed/write-calendar';
import type { CalendarDate } from '@/shared/calendar/calendar-date';

// RFC 5545, Internet Calendaring and Scheduling Core Object Specification (iCalendar), September 2009, and RFC 7986, New
// Properties for iCalendar, October 2016, by section. Read by hand here, and by ical.js, a parser kept by others.

const WRITTEN = new Date('2026-11-25T15:04:05Z');
const of = (more: Partial<FeedEvent> = {}): FeedEvent => ({
  id: 'step-12',
  day: '2026-12-31' as CalendarDate,
  summary: 'Lift 2: River desk',
  description: 'A step of this job’s time line.',
  path: '/jobs/5',
  entryId: 228,
  ...more,
});
const write = (events: FeedEvent[], name = 'Heron Yard') =>
  writeCalendar(events, {
    name,
    bookId: '0123456789abcdef',
    origin: 'http://192.168.1.20:3000',
    writtenAt: new Map([[228, WRITTEN]]),
  });
const octets = (text: string) => new TextEncoder().encode(text).length;
/** The content lines as they were before they were folded (3.1). */
const unfolded = (text: string) => text.replaceAll('\r\n ', '').split('\r\n');
const valuesOf = (text: string, name: string) =>
  unfolded(text).flatMap((line) => (new RegExp(`^${name}[:;]`).test(line) ? [line.slice(line.indexOf(':') + 1)] : []));
const read = (text: string) => new ICAL.Component(ICAL.parse(text));
const eventsOf = (text: string) => read(text).getAllSubcomponents('vevent');

/** Names that a workshop can have, and every character that TEXT treats its own way. */
const AWKWARD = 'Ash, oak; "elm" \\ yew:\nsecond line, 木工房 🌲 — Ünter';
const LONG = `${'Très long nom de pièce, '.repeat(12)}🌲🌲🌲${'木'.repeat(80)}`;

describe('RFC 5545, 3.1: content lines', () => {
  const text = write([of({ summary: LONG, description: LONG }), of({ id: 'limit-1', summary: AWKWARD })], AWKWARD);

  it('end with CRLF, the last one too, and no other line break is in it', () => {
    expect(text.endsWith('END:VCALENDAR\r\n')).toBe(true);
    expect(text.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
  });

  it('are at most 75 octets long, without the line break', () => {
    const lines = text.split('\r\n');
    expect(Math.max(...lines.map(octets))).toBeLessThanOrEqual(75);
    expect(lines.filter((line) => line.startsWith(' ')).length).toBeGreaterThan(10);
  });

  it('are never folded inside a character: every line by itself is well-formed UTF-8', () => {
    for (const line of text.split('\r\n')) {
      const bytes = new TextEncoder().encode(line);
      expect(new TextDecoder('utf-8', { fatal: true }).decode(bytes)).toBe(line);
      expect(line).not.toMatch(/\uFFFD/);
    }
  });

  it('come back whole when they are unfolded', () => {
    expect(eventsOf(text)[0]?.getFirstPropertyValue('summary')).toBe(LONG);
  });
});

describe('RFC 5545, 3.3.11: TEXT', () => {
  it('escapes backslash, semicolon, comma and new line, and leaves the colon and the quote', () => {
    const [summary] = valuesOf(write([of({ summary: AWKWARD })]), 'SUMMARY');
    expect(summary).toBe('Ash\\, oak\\; "elm" \\\\ yew:\\nsecond line\\, 木工房 🌲 — Ünter');
  });

  it('is read back as it was by a parser of others; the calendar’s name is written the same way', () => {
    const text = write([of({ summary: AWKWARD, description: `${AWKWARD}\r\n\tand a tab` })], AWKWARD);
    const [event] = eventsOf(text);
    expect(event?.getFirstPropertyValue('summary')).toBe(AWKWARD);
    expect(event?.getFirstPropertyValue('description')).toBe(`${AWKWARD}\n\tand a tab`);
    // NAME is younger than the parser, which gives it as it is written.
    expect(read(text).getFirstPropertyValue('name')).toBe(valuesOf(text, 'SUMMARY')[0]);
  });

  it('holds no control character but the tab, and half of no surrogate pair', () => {
    const text = write([of({ summary: 'a\u0000b\u0007c\u001fd\u007fe\ud83cf' })]);
    expect(valuesOf(text, 'SUMMARY')).toEqual(['abcdef']);
  });

  it('lets nobody write a line of their own through a name', () => {
    const text = write([of({ summary: 'x\r\nEND:VEVENT\r\nBEGIN:VEVENT' })], 'y\r\nMETHOD:CANCEL');
    expect(eventsOf(text)).toHaveLength(1);
    expect(valuesOf(text, 'METHOD')).toEqual([]);
  });
});

describe('RFC 5545, 3.4 and 3.6: the object and its calendar', () => {
  const text = write([of()]);

  it('is one VCALENDAR with VERSION 2.0 and a PRODID, each once (3.6, 3.7.3, 3.7.4)', () => {
    expect(text.startsWith('BEGIN:VCALENDAR\r\n')).toBe(true);
    expect(valuesOf(text, 'VERSION')).toEqual(['2.0']);
    expect(valuesOf(text, 'PRODID')).toEqual(['-//Flitchbook//Flitchbook//EN']);
  });

  it('has no METHOD: nothing is asked of anybody (3.7.2)', () => {
    expect(valuesOf(text, 'METHOD')).toEqual([]);
  });

  it('is well formed with no event in it too', () => {
    const empty = write([]);
    expect(eventsOf(empty)).toEqual([]);
    expect(empty.endsWith('END:VCALENDAR\r\n')).toBe(true);
  });
});

describe('RFC 5545, 3.6.1: an event', () => {
  const text = write([of(), of({ id: 'limit-40', day: '2028-02-28' as CalendarDate })]);

  it('has its UID and its DTSTAMP, each once', () => {
    for (const event of eventsOf(text)) {
      expect(event.getAllProperties('uid')).toHaveLength(1);
      expect(event.getAllProperties('dtstamp')).toHaveLength(1);
    }
  });

  it('is a whole day: DTSTART a DATE, DTEND the day after, which it does not include', () => {
    const start = unfolded(text).filter((line) => line.startsWith('DTSTART'));
    expect(start).toEqual(['DTSTART;VALUE=DATE:20261231', 'DTSTART;VALUE=DATE:20280228']);
    const end = unfolded(text).filter((line) => line.startsWith('DTEND'));
    expect(end).toEqual(['DTEND;VALUE=DATE:20270101', 'DTEND;VALUE=DATE:20280229']);
    const [first] = eventsOf(text);
    const event = first && new ICAL.Event(first);
    expect(event?.startDate.isDate).toBe(true);
    expect(event?.duration.toSeconds()).toBe(24 * 60 * 60);
  });

  it('is the same day wherever the server stands: a DATE has no time zone (3.3.4)', () => {
    expect(text).not.toMatch(/TZID|VTIMEZONE/);
  });

  it('takes no time of anybody (TRANSP, 3.8.2.7)', () => {
    expect(valuesOf(text, 'TRANSP')).toEqual(['TRANSPARENT', 'TRANSPARENT']);
  });
});

describe('RFC 5545, 3.8.4.7: UID', () => {
  it('stays the same when the day or the words change, and is another for another matter', () => {
    const uid = (event: FeedEvent) => valuesOf(write([event]), 'UID')[0];
    expect(uid(of({ day: '2027-03-01' as CalendarDate, summary: 'Later' }))).toBe(uid(of()));
    expect(uid(of())).toBe('step-12@0123456789abcdef.flitchbook.invalid');
    expect(uid(of({ id: 'step-13' }))).not.toBe(uid(of()));
  });
});

describe('RFC 5545, 3.8.7: when it was last revised', () => {
  const text = write([of()]);

  it('has DTSTAMP and LAST-MODIFIED in UTC, equal where there is no METHOD (3.8.7.2, 3.8.7.3)', () => {
    expect(valuesOf(text, 'DTSTAMP')).toEqual(['20261125T150405Z']);
    expect(valuesOf(text, 'LAST-MODIFIED')).toEqual(['20261125T150405Z']);
  });

  it('has a SEQUENCE that grows with what is written about it (3.8.7.4)', () => {
    expect(valuesOf(text, 'SEQUENCE')).toEqual(['228']);
    expect(eventsOf(write([of({ entryId: 300 })]))[0]?.getFirstPropertyValue('sequence')).toBe(300);
  });

  it('is written the same twice: nothing of it comes from the clock', () => {
    expect(write([of()])).toBe(text);
  });
});

describe('RFC 5545, 3.8.4.6: URL', () => {
  it('is the page of the book it is about', () => {
    expect(valuesOf(write([of()]), 'URL')).toEqual(['http://192.168.1.20:3000/jobs/5']);
  });
});

describe('RFC 7986, 5.1 and 5.7: NAME and REFRESH-INTERVAL', () => {
  it('names the workshop, and asks to be looked at again after an hour', () => {
    const lines = unfolded(write([]));
    expect(lines).toContain('NAME:Heron Yard');
    expect(lines).toContain('REFRESH-INTERVAL;VALUE=DURATION:PT1H');
  });
});
