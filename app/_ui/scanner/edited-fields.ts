import { isField } from './field-memory';

/** Knows whether somebody has put anything into a field of the page. */
export interface EditedFields {
  /** True while a field of the page holds something else than when it was first entered, or the focused one is not empty. */
  readonly any: () => boolean;
  readonly stop: () => void;
}

type Holder = HTMLElement & { readonly value?: string; readonly checked?: boolean };

/**
 * Watches the fields of a document. A field counts while it is on the page, so what was booked and closed is forgotten by
 * itself; what a hand scanner typed and was taken out again never counts.
 */
export function watchFields(document: Document): EditedFields {
  const before = new Map<Holder, string>();
  const note = (target: EventTarget | null) => {
    if (isHolder(target) && !before.has(target)) before.set(target, held(target));
  };
  const enter = (event: Event) => note(event.target);
  // A box ticked through its label is pressed before it is entered, and then it holds the new choice already.
  const change = (event: Event) => {
    const { target } = event;
    if (isChoice(target) && !before.has(target)) before.set(target, 'untouched');
  };
  // A field may have the focus before anybody listens; its first character tells of it then.
  note(document.activeElement);
  document.addEventListener('focusin', enter, true);
  document.addEventListener('beforeinput', enter, true);
  document.addEventListener('change', change, true);
  return {
    any: () => {
      for (const [field] of before) if (!field.isConnected) before.delete(field);
      const focused = document.activeElement;
      if (isField(focused) && held(focused).trim() !== '') return true;
      return [...before].some(([field, value]) => held(field) !== value);
    },
    stop: () => {
      document.removeEventListener('focusin', enter, true);
      document.removeEventListener('beforeinput', enter, true);
      document.removeEventListener('change', change, true);
    },
  };
}

function isChoice(target: EventTarget | null): target is HTMLInputElement {
  return target instanceof HTMLInputElement && ['checkbox', 'radio', 'file'].includes(target.type);
}

function isHolder(target: EventTarget | null): target is Holder {
  return isField(target) || isChoice(target);
}

function held(field: Holder): string {
  if (field instanceof HTMLInputElement && field.type !== 'file' && isChoice(field)) return String(field.checked);
  return field.value ?? field.textContent ?? '';
}
