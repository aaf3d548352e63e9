/** What shape of wood it is: a slab keeps its natural edges, a pack is boards of random size, a sheet is made, an offcut is what was left. */
export const PIECE_FORMS = ['slab', 'board', 'pack', 'sheet', 'offcut'] as const;
export type PieceForm = (typeof PIECE_FORMS)[number];

/** What a piece is marked with when it arrives. */
export const PIECE_FLAGS = ['broken', 'strapped', 'checked', 'twisted', 'live-edge-left', 'live-edge-right'] as const;
export type PieceFlag = (typeof PIECE_FLAGS)[number];

/** The highest place in a flitch: no log is sawn into more. */
export const MOST_FLITCH_NUMBER = 999;

/** How a board was left by the mill: as it was sawn, or surfaced two sides, or all four. */
export const SURFACINGS = ['rough', 'S2S', 'S4S'] as const;
export type Surfacing = (typeof SURFACINGS)[number];

/** Which way the grain of a sheet's faces runs. */
export const GRAINS = ['length', 'width', 'none'] as const;
export type Grain = (typeof GRAINS)[number];
