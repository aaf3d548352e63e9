/** Why a command did not do what was asked: an expected failure, with what the words for it need. */
export type Refusal = {
  code: RefusalCode;
  /** The field of the form it belongs beside. */
  field?: string;
  facts?: Record<string, string | number | null>;
};

export type RefusalCode =
  | 'no-book-yet'
  | 'book-already-there'
  | 'key-used-for-something-else'
  | 'not-found'
  | 'below-zero'
  | 'changes-nothing'
  | 'not-an-exact-amount'
  | 'more-than-one-piece'
  | 'lot-has-no-quantity'
  | 'changed-since'
  | 'already-reversed'
  | 'nothing-to-reverse'
  | 'used-since'
  | 'code-means-something-else'
  | 'own-label-is-not-taught'
  | 'name-taken'
  | 'opened-before-made'
  | 'opened-in-the-future'
  | 'already-open'
  | 'made-in-the-future'
  | 'made-after-best-before'
  | 'received-in-the-future'
  | 'absurd-count'
  | 'unit-does-not-fit'
  | 'place-in-itself'
  | 'same-place'
  | 'verdict-changed'
  | 'stop-not-overridable'
  | 'override-needs-reason'
  | 'override-needs-test-pour'
  | 'test-pour-not-passed'
  | 'not-enough-left'
  | 'already-empty'
  | 'release-needs-reason'
  | 'photo-not-an-image'
  | 'photo-too-large'
  | 'photo-too-many-pixels'
  | 'reason-needed'
  | 'day-in-the-past'
  | 'system-unknown'
  | 'inspection-valid-before-made'
  | 'lot-dates-differ'
  | 'outside-range'
  | 'has-stock';
