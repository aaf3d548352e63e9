type Facts = Readonly<Record<string, string | number | null>>;

const PURPOSES: Readonly<Record<string, string>> = { client: 'a client’s', own: 'your own', test: 'a test' };
const FIELDS = [
  ['name', 'its name'],
  ['purpose', 'it'],
  ['client', 'the client'],
  ['contact', 'the contact'],
  ['dayOfUse', 'the day of use'],
  ['dueOn', 'the due day'],
  ['note', 'the note'],
] as const;

/** What the fields of a job say now, as far as they are named: `the due day is now 10 Dec 2026; the note is now empty`. */
export function sayJobNow(facts: Facts, date: (value: string | number | null | undefined) => string): string {
  return FIELDS.flatMap(([field, words]) => {
    const value = facts[field];
    if (value === undefined) return [];
    if (value === '' || value === null) return [`${words} is now ${field === 'dueOn' ? 'none' : 'empty'}`];
    if (field === 'dueOn' || field === 'dayOfUse') return [`${words} is now ${date(value)}`];
    if (field === 'purpose') return [`${words} is now ${PURPOSES[value] ?? value}`];
    return [`${words} is now “${value}”`];
  }).join('; ');
}
