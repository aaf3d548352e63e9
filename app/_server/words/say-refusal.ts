import type { Refusal, RefusalCode } from '@/app/_server/refusal';
import { sayJobNow } from '@/app/_server/words/say-job-now';
import { POUR_WORDS } from '@/app/_server/words/say-pour-refusals';
import { TRACE_WORDS } from '@/app/_server/words/say-trace-refusals';
import type { CalendarDate } from '@/shared/calendar/calendar-date';
import type { DateOrder } from '@/shared/calendar/date-readings';
import { sayDate } from '@/shared/calendar/say-date';
import { MOST_AT_ONCE } from '@/shared/labels/most-at-once';
import { sayOutlineFault } from '@/shared/outline/say-outline-fault';
import { sayPhotoFault } from '@/shared/outline/say-photo-fault';
import type { Problem } from '@/shared/result/answer';
import type { OwnLabelCode } from '@/shared/scan-codes/own-label';
import { printOwnLabel } from '@/shared/scan-codes/print-own-label';
import { MOST_POUR_DAYS } from '@/shared/shelf-life/test-pour-since';
import type { CureHold } from '@/shared/timeline/cure-hold';
import { sayCureHold } from '@/shared/timeline/say-cure-hold';
import { printQuantity } from '@/shared/units/print-quantity';
import { sayWeighingError } from '@/shared/units/say-weighing-error';
import { amountOf, type StockUnit } from '@/shared/units/stock-unit';
import type { WeighingError } from '@/shared/units/used-by-weight';

type Facts = Record<string, string | number | null>;
type SayFact = (value: string | number | null | undefined) => string;
type Words = (facts: Facts, date: SayFact) => { what: string; todo: string; kept?: string };

const NOT_WRITTEN = 'Nothing was written; what you entered is still here.';
const label = (facts: Facts) => printOwnLabel(String(facts.label ?? '') as OwnLabelCode);
const amount = (value: Facts[string] | undefined, unit: Facts[string] | undefined) =>
  printQuantity(amountOf(unit as StockUnit, Number(value)), unit as StockUnit, { prefer: 'metric' });
const FIELDS: Record<string, string> = {
  placeId: 'place',
  condition: 'condition',
  hold: 'hold',
  jobId: 'job',
  opened: 'opened day',
  outline: 'outline',
  marks: 'marks on the drawing',
  pair: 'pairing',
  sample: 'sample',
};

const WORDS: Record<RefusalCode, Words> = {
  ...POUR_WORDS,
  ...TRACE_WORDS,
  'no-book-yet': () => ({ what: 'There is no book here yet.', todo: 'Begin one first.' }),
  'book-already-there': () => ({
    what: 'A book has been begun here already.',
    todo: 'Open it: nothing of it was changed.',
  }),
  'key-used-for-something-else': () => ({
    what: 'This press is in the book already, with something else in it.',
    todo: 'Look in the history whether what you want is written. If it is not, change what you entered and press again.',
    kept: 'Nothing was written a second time; what you entered is still here.',
  }),
  'not-found': (facts) => ({
    what: facts.noPart
      ? `${label(facts)} is part of no two-part system in this book.`
      : facts.label
        ? `${label(facts)} is not in this book.`
        : 'That is not in this book.',
    todo: facts.noPart
      ? 'Scan the other part, or write its system on the product’s page.'
      : 'Check the label, or search for it by name.',
  }),
  'below-zero': () => ({
    what: 'There is less left than that.',
    todo: 'Somebody may have taken some just now. Look again at what is left.',
  }),
  'job-changed-meanwhile': (facts, date) => ({
    what: `${facts.job} was changed meanwhile${facts.who ? ` by ${facts.who}` : ''}: ${sayJobNow(facts, date)}.`,
    kept: 'Nothing was written. What you typed is still here; what you did not touch is as the book has it now.',
    todo: 'Look at it, and press again to put what you typed in its place.',
  }),
  'changes-nothing': () => ({ what: 'It is like that already.', todo: 'There is nothing to write.' }),
  'not-an-exact-amount': () => ({
    what: 'That is not an amount the book can keep.',
    todo: 'Give an amount above zero.',
  }),
  'more-than-one-piece': () => ({
    what: 'A piece is in the book already.',
    todo: 'Each piece of wood is one thing with one label.',
  }),
  'lot-has-no-quantity': () => ({
    what: 'A lot has no quantity of its own.',
    todo: 'Quantities are in its containers.',
  }),
  'changed-since': (facts) => ({
    what: `The ${FIELDS[String(facts.field)] ?? 'state'} of ${facts.label ? label(facts) : 'the lot'} was changed again since.`,
    todo: 'Reverse the later entry first.',
  }),
  'already-reversed': (facts) => ({
    what: `This was already reversed, by entry ${facts.entry}.`,
    todo: 'An entry is reversed once.',
  }),
  'nothing-to-reverse': () => ({
    what: 'That entry moved nothing, so there is nothing to undo.',
    todo: 'Write the correction as a new entry.',
  }),
  'used-since': (facts) => ({ what: `Some of ${label(facts)} was used since.`, todo: 'Reverse what was used first.' }),
  'code-means-something-else': (facts) => ({
    what: `This code already means ${sayMeaning(facts.means)}.`,
    todo: 'A code means one thing. Use another code of the label, or one of our own labels.',
  }),
  'own-label-is-not-taught': () => ({
    what: 'This is one of our own labels.',
    todo: 'Own labels are given by the book, not taught.',
  }),
  'name-taken': (facts) => ({
    what: `There is already one called ${facts.name}.`,
    todo: 'Choose it, or give this one another name.',
  }),
  'flitch-number-taken': (facts) => ({
    what: `Number ${facts.number} of flitch ${facts.flitch} is ${label(facts)} already.`,
    todo: facts.back
      ? `Each piece of a flitch has its own number, as it was sawn. Change the number of ${label(facts)} on its page first, then bring this one back.`
      : 'Each piece of a flitch has its own number, as it was sawn. Give this one another, or put that one right first.',
  }),
  'opened-before-made': (facts, date) => ({
    what: facts.on
      ? `${label(facts)} is known to have been opened on ${date(facts.on)}: it cannot have been made after that.`
      : facts.made
        ? `It was made on ${date(facts.made)}: it cannot have been opened before.`
        : 'It cannot have been opened before it was made.',
    todo: 'Check both dates on the label.',
  }),
  'opened-in-the-future': () => ({
    what: 'It cannot have been opened on a day to come.',
    todo: 'Give today or an earlier day.',
  }),
  'part-used-needs-opened': () => ({
    what: 'Less is in it than when it was full, so it was opened; its opened day is missing.',
    todo: 'Give the day it was opened, or the earliest it can have been, as a guess.',
  }),
  'already-open': (facts, date) => ({
    what: `It is known to have been opened on ${date(facts.on)}.`,
    todo: 'A guess does not replace a known day.',
  }),
  'made-in-the-future': () => ({
    what: 'It cannot have been made on a day to come.',
    todo: 'Check the made-on date and its year.',
  }),
  'made-after-best-before': () => ({
    what: 'That limit is before the day it was made.',
    todo: 'Check both dates on the label.',
  }),
  'received-in-the-future': () => ({ what: 'That day is still to come.', todo: 'Give today or an earlier day.' }),
  'absurd-count': () => ({
    what: 'That many at once cannot be right.',
    todo: `Give a number from 1 to ${MOST_AT_ONCE}.`,
  }),
  'unit-does-not-fit': () => ({
    what: 'That does not fit the size of this container.',
    todo: 'Check the number and its unit.',
  }),
  'place-in-itself': () => ({ what: 'A place cannot be inside itself.', todo: 'Choose another place for it.' }),
  'same-place': (facts) => ({ what: `It is in ${facts.place} already.`, todo: 'Scan another place to move it there.' }),
  'verdict-changed': (facts) => ({
    what: `Something changed while you were looking: the answer for ${label(facts)} is now ${sayWord(facts.word)}.`,
    todo: 'Read the new answer, then decide again.',
    kept: 'Nothing was written.',
  }),
  'stop-not-overridable': (facts) => ({
    what: facts.label
      ? `${label(facts)} may not be used: ${SAY_STOP[String(facts.because)] ?? 'it is stopped'}.`
      : 'This Stop cannot be overridden.',
    todo: 'A hold or recall is released first, with a reason. What is spoilt, or does not belong together, is never used.',
  }),
  'override-needs-reason': () => ({ what: 'Using it anyway needs a reason.', todo: 'Write why, in a few words.' }),
  'override-needs-test-pour': () => ({
    what: 'Using it anyway needs a test pour with a photo or a note.',
    todo: 'Pour a little, let it cure as the data sheet says, and record how it came out.',
  }),
  'test-pour-not-passed': () => ({ what: 'The test pour did not pass.', todo: 'Take another container.' }),
  'not-enough-left': (facts) => ({
    what:
      facts.label && facts.unit
        ? `${label(facts)} holds ${amount(facts.left, facts.unit)}, less than the ${amount(facts.asked, facts.unit)} asked for.`
        : 'More than the container holds.',
    todo: 'Take what is left and the rest from another, or weigh it again.',
  }),
  'already-empty': (facts) => ({
    what: `Nothing is left of ${label(facts)}: the last of it was taken already.`,
    todo: 'Its page shows who took it and when. Take another.',
  }),
  'release-needs-reason': () => ({
    what: 'A release is a decision: it needs its reason.',
    todo: 'Write why it may be used again.',
  }),
  'photo-not-an-image': () => ({
    what: 'That file is not a picture this program can read.',
    todo: 'Take the photo again, or save it as JPEG or PNG.',
  }),
  'photo-heic-unreadable': () => ({
    what: 'That photo is in HEIC, which this computer cannot open, or it is damaged.',
    todo: 'Set the phone’s camera to JPEG (“most compatible”) and take it again, or save it as JPEG.',
  }),
  'photo-too-large': (facts) => ({
    what: `That photo is ${facts.size}; the most is ${facts.most}.`,
    todo: 'Choose a smaller one.',
  }),
  'photo-too-many-pixels': (facts) => ({
    what: `That picture would unpack to ${facts.megapixels} megapixels; the most is ${facts.most}.`,
    todo: 'Choose a smaller one.',
  }),
  'reason-needed': () => ({
    what: 'This needs a reason.',
    todo: 'Write why, in a few words; it stays in the history.',
  }),
  'day-in-the-past': () => ({ what: 'That day has passed.', todo: 'Give today or a day to come.' }),
  'system-unknown': () => ({ what: 'That resin system is not in the book.', todo: 'Choose one, or name a new one.' }),
  'inspection-valid-before-made': () => ({
    what: 'It cannot be valid until before the day it was made.',
    todo: 'Check both dates.',
  }),
  'lot-dates-differ': (facts, date) => ({
    what: `Lot ${facts.lot} is in the book with ${date(facts.book)}; this label says ${date(facts.label)}.`,
    todo: "Read the label again. If the book is wrong, correct the lot's dates on its page; if it is another lot, give its code.",
  }),
  'outside-range': () => ({ what: 'That number cannot be right here.', todo: 'Check the number and its unit.' }),
  'has-stock': (facts) => ({
    what: `There is stock of ${facts.name} counted in the old unit.`,
    todo: 'Teach a new product for the other unit.',
  }),
  'test-pour-too-old': (facts, date) => ({
    what: `The test pour is too old: ${SAY_SINCE[String(facts.because)] ?? SAY_SINCE.age}.`,
    todo: `Record one that was poured on ${date(facts.since)} or later.`,
  }),
  'job-not-open': (facts) => ({
    what: `${facts.job} is ${facts.state}: nothing more is given to it.`,
    todo: 'Open it again on its page, or choose another job.',
  }),
  'change-the-job-instead': () => ({
    what: 'This change of the job freed its pieces. Undoing it here would give them back to a job that stays as it is.',
    todo: 'Change the job instead: open it again on its page, then promise the pieces to it anew.',
  }),
  'happened-before-it-arrived': (facts, date) => ({
    what: `${label(facts)} came in on ${date(facts.received)}: nothing can have happened to it here before.`,
    todo: 'Give that day or a later one.',
  }),
  'changed-after-that-day': (facts, date) => ({
    what: `What is left of ${label(facts)} changed in the book on ${date(facts.since)}, after that day.`,
    todo: 'Give that day or a later one, or reverse the later entry first.',
  }),
  'weighing-does-not-fit': (facts) => ({
    what: sayWeighingError({ code: facts.because } as WeighingError),
    todo: 'Check the weights and their unit.',
  }),
  'weighing-differs': (facts) => ({
    what: `By these weights ${amount(facts.used, facts.unit)} of ${label(facts)} was used, not ${amount(facts.asked, facts.unit)}: the book changed while you were looking.`,
    todo: 'Look at the amount again, then press.',
    kept: 'Nothing was written.',
  }),
  'no-outline': (facts) => {
    const { says, toDo } = sayOutlineFault(facts.why as Parameters<typeof sayOutlineFault>[0]);
    return { what: says, todo: toDo };
  },
  'no-longer-here': (facts) => ({
    what: `${label(facts)} is no longer in the shop.`,
    todo: 'Look in its history what became of it. What was taken out by mistake is reversed there.',
  }),
  'pack-has-no-outline': (facts) => ({
    what: `${label(facts)} is a pack of boards: it has no outline.`,
    todo: 'Take a board out of it, and measure that.',
  }),
  'measured-shape': (facts) => ({
    what: `${label(facts)} has a measured outline: its length and widths are those of the outline.`,
    todo: 'Measure it again, and they follow.',
  }),
  'mark-off-the-wood': () => ({
    what: 'This does not lie on the wood.',
    todo: 'Move it onto the drawing, or check its numbers.',
  }),
  'not-a-pack': (facts) => ({
    what: `${label(facts)} is no pack of boards.`,
    todo: 'Boards are taken out of a pack alone.',
  }),
  'board-gone': () => ({
    what: 'Somebody took one of these boards out of the pack meanwhile.',
    todo: 'Load the page again: it shows what is still in the pack.',
  }),
  'no-boards-chosen': () => ({ what: 'No board is chosen.', todo: 'Choose the boards that come out of the pack.' }),
  'mark-gone': () => ({
    what: 'Somebody took this mark off meanwhile.',
    todo: 'Load the page again: it shows the marks as they are.',
  }),
  'end-check-does-not-fit': () => ({
    what: 'An end check is deeper than nothing and less deep than the piece is long.',
    todo: 'Give how far the deepest check runs in from the end.',
  }),
  'photo-does-not-fit': (facts) => {
    const { says, toDo } = sayPhotoFault(facts.why as Parameters<typeof sayPhotoFault>[0]);
    return { what: says, todo: toDo };
  },
  'photo-too-small': (facts) => ({
    what: `That photo is ${facts.width} × ${facts.height} pixels: too small to measure by. The shorter side needs ${facts.least}.`,
    todo: 'Choose the photo as the camera took it, not a copy made smaller.',
  }),
  'photo-is-another': (facts) => ({
    what: `The photo that came is ${facts.width} × ${facts.height} pixels, not the one that was tapped on.`,
    todo: 'Choose the photo once more; the points stay.',
  }),
  'cut-already': (facts) => ({
    what: `${label(facts)} was cut meanwhile by ${facts.who}, into ${facts.pieces} piece${facts.pieces === 1 ? '' : 's'}.`,
    todo: 'Load the page again: it shows them. What you drew can be drawn on one of those.',
  }),
  'measured-meanwhile': (facts) => ({
    what: `${label(facts)} was measured again since: it is no longer the outline this was drawn on.`,
    todo: 'Load the page again, look at the new outline, and draw it there.',
  }),
  'line-does-not-cut': (facts) => ({
    what: `Line ${facts.line} ${SAY_LINE[String(facts.why)] ?? SAY_LINE['line-misses-the-wood']}.`,
    todo: 'Draw it across the wood, or take it off.',
  }),
  'no-line': () => ({ what: 'There is no line to cut along.', todo: 'Tap the drawing, or type where the cut goes.' }),
  'all-scrap': (facts) => ({
    what: 'Every piece is scrap: nothing would be kept.',
    todo: `Keep one of them, or throw ${label(facts)} away as a whole on its page.`,
  }),
  'resaw-too-thin': () => ({
    what: 'One of the halves would be thinner than a saw can leave.',
    todo: 'Give a thickness that leaves both a millimetre at the least, after the kerf.',
  }),
  'moved-on': (facts) => ({
    what: `${label(facts)}, cut from it, has moved on: it ${SAY_MOVED_ON[String(facts.because)] ?? 'was written about'} since.`,
    todo: `Undo that first: the key stands beside it in the history of ${label(facts)}. Then undo this. What cannot be undone stays, and is put right on the pieces themselves.`,
  }),
  'pair-of-other-system': (facts) => ({
    what: `${facts.product} is not the other part of this system: the two are never mixed.`,
    todo: 'Choose a lot of the other part.',
  }),
  'look-before-made': () => ({
    what: 'That day is before the sample was made, or not after the look before it.',
    todo: 'Give a later day.',
  }),
  'sample-of-nothing': () => ({
    what: 'It is not said of which pour or which lots the sample is.',
    todo: 'Choose the lift it was kept of, or the lot of each part.',
  }),
  'sample-gone': () => ({
    what: 'That sample is gone: somebody wrote that it was thrown away or lost.',
    todo: 'Load the page again.',
  }),
  'pack-gone-since': (facts) => ({
    what: `The pack ${label(facts)} is no longer on hand: the last of it was taken or thrown away since.`,
    todo: 'Undo that first, in the history of the pack. Then undo this.',
  }),
  'cut-again-instead': () => ({
    what: 'This undid a cut. Undoing it here would make the same pieces a second time.',
    todo: 'Cut the piece again on its page, or take the boards out of the pack again.',
  }),
  'no-straps': (facts) => ({
    what: `${label(facts)} has no bands in the book.`,
    todo: 'There is nothing to take off.',
  }),
  'pair-does-not-fit': (facts) => ({
    what: `${label(facts)} cannot be the other half: ${SAY_PAIR[String(facts.why)] ?? SAY_PAIR.gone}.`,
    todo: 'Choose another sister of the flitch.',
  }),
  'paired-already': (facts) => ({
    what: `${label(facts)} is paired with ${printOwnLabel(String(facts.with ?? '') as OwnLabelCode)} already.`,
    todo: 'Part that pair first.',
  }),
  'not-paired': (facts) => ({ what: `${label(facts)} is in no pair.`, todo: 'There is nothing to part.' }),
  'wetter-than-possible': (facts) => ({
    what: `${Number(facts.mcTenths) / 10} % is more water than this wood can hold: it is full at ${Math.floor(Number(facts.most) / 10)} %.`,
    todo: 'Check the figure, and the species the meter was set to.',
  }),
  'off-the-piece': () => ({ what: 'That place is beyond the piece.', todo: 'Check the length and its unit.' }),
  'reading-gone': () => ({ what: 'That reading was struck out already.', todo: 'There is nothing to strike.' }),
  'ends-before-it-begins': () => ({ what: 'The last day is before the first.', todo: 'Check both days.' }),
  'step-needs-name': () => ({ what: 'A step needs a name.', todo: 'Say in a few words what is done.' }),
  'step-gone': () => ({
    what: 'Somebody took this step off the time line meanwhile.',
    todo: 'Load the page again: it shows the steps as they are.',
  }),
  'step-done-already': (facts, date) => ({
    what: `${facts.step} is done, on ${date(facts.on)}: it stays where it is.`,
    todo: 'Say first that it is not done, if that is so.',
  }),
  'step-moved-meanwhile': (facts, date) => ({
    what: `Somebody moved ${facts.step} to ${date(facts.to)} meanwhile.`,
    todo: 'Load the page again, look at the days as they are, then move it.',
  }),
  'step-of-a-pour': (facts) => ({
    what: `${facts.step} belongs to the plan of its pour.`,
    todo: 'Take it off there, on the page of the pour.',
  }),
  'step-part-changed': (facts) => ({
    what: `${facts.step} was given to another part since.`,
    todo: 'Load the page again: which part it is for is changed at the step itself.',
  }),
  'lift-is-poured': (facts) => ({
    what: `${facts.step} is done by being poured.`,
    todo: 'Pour it from its page: its lots and weights are kept there. A pour written by mistake is reversed in the history.',
  }),
  'cure-hold': (facts, date) => ({
    what: sayCureHold(
      {
        because: facts.because as CureHold['because'],
        after: String(facts.after),
        until: facts.until as CalendarDate,
        ...(typeof facts.untilMinute === 'number' && { untilMinute: facts.untilMinute }),
      },
      date,
    ),
    todo:
      facts.because === 'not-poured'
        ? 'Pour it from its page first. If it was poured and only not written down, write it down. If you go on all the same, write why: the reason stays in the history.'
        : 'Wait until then. If you go on all the same, write why: the reason stays in the history.',
  }),
  'stage-jump': (facts) => ({
    what: `A job does not go from ${facts.from} to ${facts.to} at once.`,
    todo: 'Go by the stages between, each as it happens.',
  }),
  'no-coverage': (facts) => ({
    what: `How far ${facts.product} goes is not in the book.`,
    todo: 'Give the coverage here, or write what its data sheet says on its page.',
  }),
  'area-unknown': (facts) => ({
    what: facts.part ? `The size of ${facts.part} is not known.` : 'What is coated was not said.',
    todo: facts.part ? 'Give its lengths under Parts, or type the area.' : 'Choose a part, or type the area.',
  }),
  'part-needs-name': () => ({ what: 'A part needs a name.', todo: 'For example: top, left leg.' }),
  'part-gone': () => ({
    what: 'Somebody took this part off the job meanwhile.',
    todo: 'Load the page again: it shows the parts as they are.',
  }),
  'part-has-a-pour': (facts) => ({
    what: `${facts.pour} is planned for ${facts.part}.`,
    todo: 'Take that pour off first.',
  }),
  'part-has-steps': (facts) => ({
    what:
      Number(facts.count) === 1
        ? `${facts.step} on the time line belongs to ${facts.part}.`
        : `${facts.count} steps on the time line belong to ${facts.part}, the first of them ${facts.step}.`,
    todo: 'Say at each step which part it is for instead, or take it off the time line. Then take the part off.',
  }),
  'part-has-needs': (facts) => ({
    what:
      Number(facts.count) === 1
        ? `Something is on the list of needs for ${facts.part}.`
        : `${facts.count} things are on the list of needs for ${facts.part}.`,
    todo: 'Say at each need that it is for another part or the whole job, or take it off the list. Then take the part off.',
  }),
  'window-ends-before-it-begins': () => ({
    what: 'The time to coat again ends before it begins.',
    todo: 'Check both numbers of hours.',
  }),
  'no-such-season': () => ({ what: 'That season was taken off already.', todo: 'There is nothing to take off.' }),
  'stocktake-goes-on': (facts) =>
    facts.again
      ? {
          what: `A stocktake of ${facts.place} goes on: the one of ${facts.again} cannot go on again beside it.`,
          todo: 'Post that one or give it up first. Then reverse this.',
          kept: 'Nothing was reversed.',
        }
      : {
          what: `A stocktake of ${facts.place} goes on already.`,
          todo: 'Go on with that one: two people can walk it together. Or give it up first.',
        },
  'stocktake-closed': () => ({
    what: 'This stocktake is closed: somebody posted it or gave it up.',
    todo: 'Load the page again to see what came of it. Begin another to walk once more.',
  }),
  'not-seen-yet': (facts) => ({
    what: facts.label ? `${label(facts)} was not seen on this walk.` : 'That is not on this walk any more.',
    todo: 'Scan it first.',
  }),
  'nothing-seen-yet': () => ({
    what: 'Nothing was seen on this walk yet: posting it would write everything off.',
    todo: 'Walk the place and scan what is there. If it is empty, throw the things away one by one, each with its reason.',
  }),
  'no-rags-out': () => ({ what: 'No rags are waiting to be laid out.', todo: 'Somebody said so before you.' }),
  'no-feed': () => ({ what: 'There is no calendar address to end.', todo: 'Load the page again.' }),
  'promised-elsewhere': (facts, date) => ({
    what: sayPromised(facts, date),
    todo:
      facts.unit === 'piece' && Number(facts.free) === 0
        ? 'Take another, or release it from that job first.'
        : 'Take no more than is free, take another, or release it from that job first.',
  }),
  'promised-since': (facts) =>
    facts.because === 'beyond'
      ? {
          what: `More of ${label(facts)} would then be promised than there is.`,
          todo: 'Somebody has promised it since. Release that first.',
        }
      : {
          what: `What ${facts.job} was promised of ${label(facts)} was used or released since.`,
          todo: 'Reverse the later entry first, or release what is still promised.',
        },
  'not-promised': (facts) => ({
    what: `${facts.job} has no promise on ${label(facts)}.`,
    todo: 'Load the page again: it may have been used or released already.',
  }),
  'not-good-on-the-day': (facts, date) => ({
    what: facts.until
      ? `${label(facts)} is good to ${date(facts.until)}; it is needed on ${date(facts.day)}.`
      : `${label(facts)} is not known to be good on ${date(facts.day)}.`,
    todo: 'Promise another container, or inspect this one so that its limit reaches further.',
  }),
  'nothing-to-reserve': () => ({
    what: 'There is nothing free that this job still needs.',
    todo: 'What is short stands beside each need, with how much to buy.',
  }),
  'lot-has-too-little': (facts) => ({
    what: `${amount(facts.free, facts.unit)} of lot ${facts.lot} is free and good on the day, less than the ${amount(facts.asked, facts.unit)} asked for.`,
    todo: 'Ask for what is free, and take the rest from another lot.',
  }),
  'need-gone': () => ({
    what: 'Somebody changed or took off this need meanwhile.',
    todo: 'Load the page again: it shows what the job needs now.',
  }),
  'need-of-another-job': (facts) => ({
    what: `${facts.need} is needed by ${facts.job}, not by the job this was to be promised to.`,
    todo: 'Promise it to that job, or choose what this job needs itself.',
  }),
  'not-for-that-need': (facts) => ({
    what: `${label(facts)} is ${facts.is}, and what is needed is ${facts.need}.`,
    todo: 'Choose something that will do for it, or promise this one for no need in particular.',
  }),
  'need-of-a-plan': (facts) => ({
    what: `This need belongs to the pour ${facts.pour}.`,
    todo: 'Change the pour, and what it needs follows.',
  }),
  'no-density': (facts) => ({
    what: `${facts.product} has no density in the book, so mass and volume cannot be told apart.`,
    todo: 'Give its density on the product’s page, or give the amount as its stock is counted.',
  }),
  'arrival-closed': () => ({
    what: 'This order was closed already.',
    todo: 'Load the page again: it shows what is still to come.',
  }),
};

function sayPromised(facts: Facts, date: SayFact): string {
  const who = [facts.who, facts.on ? `on ${date(facts.on)}` : ''].filter(Boolean).join(' ');
  const by = who ? `, promised by ${who}` : '';
  const more = Number(facts.jobs) > 1 ? ` and ${Number(facts.jobs) - 1} more` : '';
  const forWhom = `${facts.job}${more} for ${date(facts.day)}${by}`;
  if (facts.unit === 'piece' && Number(facts.promised) === 1 && Number(facts.free) === 0)
    return `${label(facts)} is promised to another job: ${forWhom}.`;
  const free = Number(facts.free) === 0 ? 'Nothing of it is free' : `${amount(facts.free, facts.unit)} is free`;
  return `${amount(facts.promised, facts.unit)} of ${label(facts)} is promised to another job: ${forWhom}. ${free}.`;
}

const SAY_LINE: Record<string, string> = {
  'line-has-no-direction': 'needs two different points',
  'line-crosses-itself': 'crosses itself',
  'line-misses-the-wood': 'misses the wood',
  'nothing-is-left': 'leaves nothing but sawdust',
};

const SAY_MOVED_ON: Record<string, string> = {
  moved: 'was moved',
  held: 'was set on hold or freed',
  given: 'was promised or freed',
  gone: 'was taken, thrown away or cut',
  measured: 'was measured',
  marked: 'was marked',
  read: 'was read with a meter',
};

const SAY_PAIR: Record<string, string> = {
  self: 'it is the same piece',
  gone: 'it is no longer in the shop',
  stranger: 'it is of another flitch or another wood',
};

const SAY_SINCE: Record<string, string> = {
  'past-limit': 'it was made while the material was still within its limit, so it says nothing of it past the limit',
  opened: 'it was made before this container was opened',
  failed: 'the material failed an inspection after it',
  age: `it says little of the material after more than ${MOST_POUR_DAYS} days`,
};

const SAY_STOP: Record<string, string> = {
  held: 'it is on hold',
  'on-hold': 'it is on hold',
  quarantine: 'it is in quarantine',
  recalled: 'it is recalled',
  'lot-on-hold': 'its lot is on hold',
  'lot-quarantine': 'its lot is in quarantine',
  'lot-recalled': 'its lot is recalled',
  'promised-elsewhere': 'it is promised to another job',
  gone: 'it is no longer in the shop',
};

function sayMeaning(means: string | number | null | undefined): string {
  const text = String(means ?? '');
  return /^[CSBHF][0-9A-Z]{6}$/.test(text) ? printOwnLabel(text as OwnLabelCode) : text;
}

function sayWord(word: string | number | null | undefined): string {
  return word === 'stop' ? 'Stop' : word === 'care' ? 'Care' : 'Use';
}

/** A refusal in words, its dates in the order of the book. The field it names gets the sentence beside it. */
export function sayRefusal(refusal: Refusal, order: DateOrder = 'day-first'): Problem {
  const date: SayFact = (value) => sayDate(String(value) as CalendarDate, { order });
  const words = WORDS[refusal.code](refusal.facts ?? {}, date);
  return {
    code: refusal.code,
    what: words.what,
    kept: words.kept ?? NOT_WRITTEN,
    todo: words.todo,
    fields: refusal.field ? { [refusal.field]: `${words.what} ${words.todo}` } : undefined,
  };
}
