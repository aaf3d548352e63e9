import type { PourRefusalCode } from '@/app/_server/refusal';
import { sayPlanError } from '@/shared/pour/say-plan-error';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { printQuantityExact } from '@/shared/units/print-quantity-exact';
import { amountOf, type StockUnit } from '@/shared/units/stock-unit';

type Facts = Record<string, string | number | null>;
type Words = (facts: Facts, date: (value: Facts[string] | undefined) => string) => { what: string; todo: string };

const label = (code: Facts[string] | undefined) => printOwnLabel(String(code ?? '') as OwnLabelCode);
const amount = (value: Facts[string] | undefined, unit: Facts[string] | undefined = 'mg') =>
  printQuantityExact(amountOf(unit as StockUnit, Number(value)), unit as StockUnit);
const lift = (nr: Facts[string] | undefined) => (Number(nr) === 0 ? 'The seal coat' : `Lift ${nr}`);

/** What is said where a sheet, a plan or a weighing cannot be. */
export const POUR_WORDS: Record<PourRefusalCode, Words> = {
  'ratios-contradict': (facts) => ({
    what: `By mass the sheet says 100 to ${facts.byMass}; its volumes and densities make it 100 to ${facts.fromVolume}. They are ${facts.apart} % apart.`,
    todo: 'One of the numbers is misread. Look at the sheet again: ratios by mass and by volume are easily taken for each other.',
  }),
  'sheet-number': (facts) => SHEET_NUMBER[String(facts.why)] ?? WRONG_NUMBER,
  'sheet-too-large': (facts) => ({
    what: `That file is ${facts.size}; the book takes up to ${facts.most}.`,
    todo: 'Save the sheet smaller, or take a photo of the page that has the numbers.',
  }),
  'sheet-not-readable': () => ({
    what: 'That is no PDF, PNG or JPEG the book can open.',
    todo: 'Take the PDF as the maker gives it, or a photo of the page.',
  }),
  'no-sheet-yet': (facts) => ({
    what: `The book has no numbers for ${facts.system} yet.`,
    todo: 'Write down its ratio, depths and times first, under Resin.',
  }),
  'pour-needs-name': () => ({ what: 'The pour has no name.', todo: 'Give it one, for example River.' }),
  'pour-gone': () => ({
    what: 'This pour was planned anew or taken off meanwhile.',
    todo: 'Open it again from the page of its job.',
  }),
  'pour-begun': (facts) => ({
    what: facts.system
      ? `${facts.name} was begun with ${facts.system}.`
      : `Something was weighed out for ${facts.name} already.`,
    todo: facts.system
      ? 'What is in the form stays in it. Reverse what was weighed first, or go on with that resin.'
      : 'Reverse what was weighed first, the newest first.',
  }),
  'pour-does-not-work': ({ why, ...facts }) => sayPlanError({ ...facts, code: String(why) }),
  'beyond-the-sheet': (facts) => ({
    what: `${lift(facts.lift)} ${BEYOND[String(facts.why)] ?? BEYOND['deeper-than-the-sheet']}. Too much at once runs hot, cracks and smokes.`,
    todo: `${
      facts.why === 'batch-not-measured'
        ? 'Take a smaller bucket, or write down under Resin what the sheet says of a larger mass.'
        : 'Plan shallower lifts or a cooler room.'
    } If you have a reason, write it down: it stays with the pour.`,
  }),
  'lift-poured-already': (facts, date) => ({
    what: `${lift(facts.lift)} was poured on ${date(facts.on)} by ${facts.who}.`,
    todo: 'Nothing more is weighed for it. If that was wrong, reverse the pouring first.',
  }),
  'lift-below-first': (facts) => ({
    what: `${lift(facts.below)} below it is not poured yet.`,
    todo: 'Finish that one first, or plan the pour anew.',
  }),
  'lift-before-the-one-below': (facts, date) => ({
    what: `${lift(facts.below)} below it was poured on ${date(facts.on)}.`,
    todo: 'It cannot have been poured before that.',
  }),
  'lift-not-weighed': (facts) => ({
    what: `Part ${facts.part}${Number(facts.of) > 1 ? ` of batch ${facts.batch}` : ''} is not weighed yet.`,
    todo: 'Weigh out what is missing, or plan the pour with fewer batches.',
  }),
  'poured-before-weighed': (facts, date) => ({
    what: `The last of it was weighed on ${date(facts.on)}: it cannot have been poured before that.`,
    todo: 'Give that day or a later one.',
  }),
  'too-early-to-pour-again': (facts) => ({
    what: `${lift(facts.below)} below it was poured ${hours(facts)} ago. The sheet says from ${facts.from} hours.`,
    todo: 'Wait until then: the heat of both adds up, and it can crack, smoke or burn. The sheet goes before this. If you have a reason, write it down: it stays with the lift.',
  }),
  'sand-first': (facts) => ({
    what:
      facts.to === null
        ? `The sheet names no time in which resin bonds to ${lift(facts.below).toLowerCase()} by itself.`
        : `${lift(facts.below)} below it was poured ${hours(facts)} ago: past ${facts.to} hours nothing bonds to it by itself.`,
    todo: 'Sand it dull with a dust mask on, wipe it clean, and tick that it is done.',
  }),
  'amount-off': (facts) => ({
    what: `Part ${facts.part}${Number(facts.of) > 1 ? ` of batch ${facts.batch}` : ''}: ${amount(facts.is)} are in, ${amount(facts.target)} were planned.`,
    todo: 'Weigh out what is missing. If it is poured as it is, write why.',
  }),
  'lift-on-top': (facts) => ({
    what: `${lift(facts.above)} on top of it was begun since.`,
    todo: 'Reverse that one first.',
  }),
  'poured-since': (facts) => ({
    what: `${lift(facts.lift)} was poured with it since.`,
    todo: 'Reverse the pouring first, then this.',
  }),
  'part-weighed-already': (facts) => ({
    what: `${amount(facts.mass)} of part ${facts.part} are in batch ${facts.batch} already.`,
    todo: 'If more of it has to go in, say so on the card first.',
  }),
  'not-a-resin-part': (facts) => ({
    what: `${label(facts.label)} is part of no resin.`,
    todo: `Scan part ${facts.part ?? 'A or B'} of the resin, or write its system on the product’s page.`,
  }),
  'wrong-system': (facts) => ({
    what: `${label(facts.label)} belongs to ${facts.system}. This pour is ${facts.wanted}: the two do not cure together.`,
    todo: `Scan part ${facts.part} of ${facts.wanted}.`,
  }),
  'wrong-part': (facts) => ({
    what: `${label(facts.label)} is part ${facts.is}. Part ${facts.part} comes now.`,
    todo: `Scan part ${facts.part}.`,
  }),
  'part-scanned-twice': (facts) => ({
    what: `${label(facts.label)} is part ${facts.is} again, and part ${facts.is} is in already.`,
    todo: `Scan part ${facts.part}: two of the same part never cure.`,
  }),
  'same-container-for-both': (facts) => ({
    what: `${label(facts.label)} gave part ${facts.is} of this batch: it cannot give part ${facts.part} too.`,
    todo: `Scan the other container, the one with part ${facts.part}.`,
  }),
  'set-differs': (facts) => ({
    what: `${label(facts.label)} is of lot ${facts.lot || 'unknown'}, ${label(facts.other)} of lot ${facts.otherLot || 'unknown'}. The maker sells A and B as one set.`,
    todo: 'Scan the part that carries the same lot.',
  }),
  'more-than-it-held': (facts) => ({
    what: `By the book ${label(facts.label)} held ${amount(facts.left, facts.unit)}: ${amount(facts.asked, facts.unit)} cannot have come out of it.`,
    todo: 'Check the figures. If the tin held more than the book says, weigh it on its own page first.',
  }),
  'ratio-off': (facts) => ({
    what: `Batch ${facts.batch} has ${Math.abs(Number(facts.off)) / 10} % too ${Number(facts.off) < 0 ? 'little' : 'much'} part B.`,
    todo: facts.part
      ? `Add ${amount(facts.add)} of part ${facts.part} and stir again. If it is poured as it is, write why.`
      : 'If it is poured as it is, write why.',
  }),
  'river-slab-unknown': (facts) => ({ what: `${label(facts.label)} is no piece of this book.`, todo: SEARCH_AGAIN }),
  'river-slab-shapeless': (facts) => ({
    what: `${label(facts.label)} has no outline to search in.`,
    todo: 'Measure it on its own page, then search again.',
  }),
  'river-slab-gone': (facts) => ({
    what: `${label(facts.label)} is not on hand any more: it was cut, used or thrown away.`,
    todo: SEARCH_AGAIN,
  }),
  'river-slab-promised': (facts) => ({
    what: `${label(facts.label)} is promised to ${facts.job}.`,
    todo: `Free it on its own page if that job can spare it, or ${lower(SEARCH_AGAIN)}`,
  }),
  'river-gone': (facts) => ({
    what: facts.label
      ? `${slabs(facts)} ${facts.other ? 'do' : 'does'} not make this top any more.`
      : 'That river is gone.',
    todo: SEARCH_AGAIN,
  }),
  'river-changed': (facts) => ({
    what: `${slabs(facts)} ${facts.other ? 'were' : 'was'} measured or marked anew meanwhile: the river is another.`,
    todo: 'The river as it is now stands on this page. Look at it, then plan it.',
  }),
};

const SEARCH_AGAIN = 'Search for another river, or give the size another way.';

const lower = (sentence: string) => sentence.charAt(0).toLowerCase() + sentence.slice(1);
const slabs = ({ label: one, other }: Facts) => (other ? `${label(one)} and ${label(other)}` : label(one));

const hours = (facts: Facts) =>
  Number(facts.hours) < 1
    ? 'less than an hour'
    : `${facts.about ? 'about ' : ''}${facts.hours} ${facts.hours === 1 ? 'hour' : 'hours'}`;

const WRONG_NUMBER = { what: 'That number cannot be.', todo: 'Check it and its unit.' };

const SHEET_NUMBER: Record<string, { what: string; todo: string }> = {
  'no-ratio': { what: 'There is no ratio yet.', todo: 'Give it by mass or by volume, as the sheet has it.' },
  'no-densities': {
    what: 'A ratio by volume cannot be weighed without the density of both parts.',
    todo: 'Give both densities, or the ratio by mass.',
  },
  'bad-ratio': { what: 'A ratio needs two numbers above zero.', todo: 'Type it as 100 : 45.' },
  'outside-range': { what: 'No sheet says that.', todo: 'Check the number and its unit.' },
  'wrong-way-round': { what: 'It ends before it begins.', todo: 'Change the two over.' },
  'longer-with-more': {
    what: 'That is longer than a smaller mass keeps: more resin at once thickens sooner.',
    todo: 'Look at the sheet again: the minutes of two rows are easily taken for each other.',
  },
};

const BEYOND: Record<string, string> = {
  'deeper-than-the-sheet': 'is deeper than the sheet allows',
  'more-than-the-sheet': 'is more resin at once than the sheet allows',
  'batch-not-measured': 'has a batch larger than any its pot life was measured with',
  'room-too-warm': 'would be poured in a warmer room than the sheet allows',
  'room-too-cold': 'would be poured in a colder room than the sheet allows, and may stay soft',
};
