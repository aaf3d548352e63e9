/** What a field held before a burst of keys, and the way to put it back. */
export interface FieldMemory {
  readonly restore: () => void;
}

type TextField = HTMLInputElement | HTMLTextAreaElement;

/** Whether keys typed here become content, so that they must be let through until they prove to be a scan. */
export function isField(target: EventTarget | null): target is HTMLElement {
  if (!(target instanceof HTMLElement)) return false;
  if (target instanceof HTMLInputElement) return !NOT_TYPED.has(target.type);
  return target instanceof HTMLTextAreaElement || target instanceof HTMLSelectElement || target.isContentEditable;
}

const NOT_TYPED = new Set([
  'button',
  'submit',
  'reset',
  'checkbox',
  'radio',
  'file',
  'image',
  'color',
  'range',
  'hidden',
]);

/** Notes what the field holds now. Call it before the first key of a burst lands. */
export function rememberField(field: HTMLElement): FieldMemory {
  if (field instanceof HTMLSelectElement) {
    const { value } = field;
    return { restore: () => write(field, HTMLSelectElement.prototype, value) };
  }
  if (field instanceof HTMLInputElement || field instanceof HTMLTextAreaElement) return rememberTextField(field);
  const before = [...field.childNodes].map((node) => node.cloneNode(true));
  return {
    restore: () => {
      field.replaceChildren(...before);
      field.dispatchEvent(new InputEvent('input', { bubbles: true, inputType: 'historyUndo' }));
    },
  };
}

function rememberTextField(field: TextField): FieldMemory {
  const { value } = field;
  const from = field.selectionStart;
  const to = field.selectionEnd;
  const prototype = field instanceof HTMLInputElement ? HTMLInputElement.prototype : HTMLTextAreaElement.prototype;
  return {
    restore: () => {
      write(field, prototype, value);
      // Number and date fields have no caret to put back.
      if (from !== null) field.setSelectionRange(from, to);
    },
  };
}

/** Writes past React's own record of the value, so that its change handler hears of it. */
function write(field: TextField | HTMLSelectElement, prototype: object, value: string): void {
  if (field.value === value) return;
  Object.getOwnPropertyDescriptor(prototype, 'value')?.set?.call(field, value);
  field.dispatchEvent(new Event('input', { bubbles: true }));
  if (field instanceof HTMLSelectElement) field.dispatchEvent(new Event('change', { bubbles: true }));
}
