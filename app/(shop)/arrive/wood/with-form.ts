import type { TypedWood } from '@/app/(shop)/arrive/wood/schema';

/** A slab has its live edges and three widths until somebody says otherwise; what is sawn or made has neither. */
export function withForm(wood: TypedWood, form: TypedWood['form']): TypedWood {
  const flags = wood.flags.filter((flag) => !flag.startsWith('live-edge'));
  const isSlab = form === 'slab';
  return {
    ...wood,
    form,
    widths: isSlab ? 'three' : 'one',
    flags: isSlab ? [...flags, 'live-edge-left', 'live-edge-right'] : form === 'pack' ? [] : flags,
    // What the form does not ask is not kept behind its back.
    ...(form === 'sheet' ? { quarters: '', surfacing: '' as const } : {}),
    ...(form === 'sheet' || form === 'offcut' ? {} : { grain: '' as const, faceA: '', faceB: '' }),
  };
}
