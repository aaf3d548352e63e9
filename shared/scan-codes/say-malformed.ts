import type { Malformed } from '@/shared/scan-codes/scan-reading';

const LOOKS_LIKE: Record<Malformed['looksLike'], string> = {
  gs1: 'a GS1 label',
  'digital-link': 'a GS1 web link',
  gtin: 'a product number',
  own: 'one of our own labels',
  nothing: 'no code',
};

/** What to do about a code that nearly is one: a misread is far likelier than a misprint. */
const AGAIN = 'Scan it again. If it stays, type what is printed under the bars.';

/**
 * What a code nearly was and where it breaks, in sentences for the person who scanned it; the screen marks the character
 * at `at`. A GTIN with a wrong last digit gives `It looks like a product number, but its check digit does not fit: 3 is
 * there, 8 would fit.`
 */
export function sayMalformed(malformed: Malformed): { readonly what: string; readonly todo: string } {
  if (malformed.code === 'empty') return { what: 'There was nothing in it.', todo: AGAIN };
  if (malformed.code === 'too-long') {
    return {
      what: `It is longer than any code that is printed (${malformed.params.limit ?? '4096'} characters).`,
      todo: 'Scan one code alone.',
    };
  }
  const part = sayPart(malformed.params);
  return {
    what: `It looks like ${LOOKS_LIKE[malformed.looksLike]}, but ${part}${sayFault(malformed)}.`,
    todo: AGAIN,
  };
}

function sayPart({ ai, title }: Malformed['params']): string {
  if (!ai) return '';
  return `in its part (${ai})${title ? ` ${title}` : ''} `;
}

function sayFault({ code, params }: Malformed): string {
  const fits = params.expected
    ? `: ${params.found ? `${params.found} is there, ` : ''}${params.expected} would fit`
    : '';
  switch (code) {
    case 'check-digit':
      return `the check digit does not fit${fits}`;
    case 'check-character':
    case 'check-characters':
      return `the check character does not fit${fits}, so one character is wrong or two are swapped`;
    case 'wrong-length':
      return `it has the wrong length${params.length ? `, ${params.length} characters` : ''}`;
    case 'too-short':
    case 'coupon-too-short':
    case 'empty-value':
    case 'empty-message':
      return 'something is missing';
    case 'too-long':
    case 'excess-data':
      return 'there is more than belongs in it';
    case 'digits-only':
    case 'not-digits':
      return 'there is a character where only digits belong';
    case 'unknown-ai':
      return 'a part begins with a number that the standard does not know';
    case 'unknown-kind':
      return 'it begins with a letter that none of our labels has';
    case 'character-outside-alphabet':
    case 'invalid-character':
    case 'bad-uri-character':
    case 'null-character':
      return 'there is a character that does not belong in it';
    case 'bad-day':
    case 'bad-month':
    case 'no-such-day':
      return 'the calendar has no such day';
    case 'bad-hour':
    case 'bad-minute':
    case 'bad-second':
      return 'the clock has no such time';
    case 'repeated':
    case 'repeated-differently':
      return 'the same part stands in it twice';
    case 'bracket-expected':
    case 'bracket-not-closed':
      return 'a bracket is missing';
    case 'trailing-slash':
    case 'qualifier-order':
    case 'belongs-in-path':
    case 'not-an-attribute':
    case 'bad-percent-escape':
      return 'the link is not built as the standard asks';
    default:
      return 'what is printed there is not as the standard asks';
  }
}
