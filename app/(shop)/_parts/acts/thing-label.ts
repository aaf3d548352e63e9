/** An own label of a container or of a piece of wood, as it is stored. */
export const PIECE_OR_CONTAINER = /^[CSBHF][0-9A-Z]{6}$/;
