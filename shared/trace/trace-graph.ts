/**
 * What a trace is made of. Material runs from lots by containers and lifts into jobs, and with them into pieces; of a lift,
 * or of two lots mixed in a cup, a cured sample may be kept.
 */
export const TRACE_KINDS = ['lot', 'container', 'lift', 'sample', 'job', 'piece', 'fault'] as const;
export type TraceKind = (typeof TRACE_KINDS)[number];

/** A thing of the book as a trace names it: `lot:12`. */
export type TraceKey = `${TraceKind}:${number}`;

/** The key of a thing. `traceKey('lift', 7)` is `lift:7`. */
export const traceKey = (kind: TraceKind, id: number): TraceKey => `${kind}:${id}`;

/** The kind a key names. `kindOfKey('lift:7')` is `lift`. */
export const kindOfKey = (key: TraceKey): TraceKind => key.slice(0, key.indexOf(':')) as TraceKind;

/** The number a key names. `idOfKey('lift:7')` is 7. */
export const idOfKey = (key: TraceKey): number => Number(key.slice(key.indexOf(':') + 1));

/** One step of the way, from what went in to what it went into. */
export type TraceEdge = { readonly from: TraceKey; readonly to: TraceKey };
