import type { PlaceKind } from '@/app/_server/places/add-place';
import { type ContainerLine, containerLine, judgeableSelect } from '@/app/_server/stock/judgeable';
import { type PieceLine, pieceLine, pieceSelect } from '@/app/_server/stock/load-piece';
import type { OpenBook } from '@/prisma/open-book';

export type PlaceLine = {
  id: number;
  label: string;
  name: string;
  kind: PlaceKind;
  parentId: number | null;
  /** Things standing right in it, not in the places inside it. */
  things: number;
};

export type PlacePage = {
  place: PlaceLine;
  /** From the outermost to the one it is in. */
  inside: { label: string; name: string }[];
  children: PlaceLine[];
  containers: ContainerLine[];
  pieces: PieceLine[];
  more: boolean;
};

const MOST = 200;

/** Every place, for a tree; in order of name within its parent. */
export async function listPlaces(book: OpenBook): Promise<PlaceLine[]> {
  const [rows, counts] = await Promise.all([
    book.read.place.findMany({ orderBy: [{ name: 'asc' }, { id: 'asc' }] }),
    book.read.stock.groupBy({ by: ['placeId'], where: { quantity: { gt: 0 } }, _count: { _all: true } }),
  ]);
  const things = new Map(counts.map((each) => [each.placeId, each._count._all]));
  return rows.map((row) => ({ ...row, kind: row.kind as PlaceKind, things: things.get(row.id) ?? 0 }));
}

/** Everything about one place but its history. */
export async function placePage(book: OpenBook, label: string): Promise<PlacePage | undefined> {
  const places = await listPlaces(book);
  const place = places.find((each) => each.label === label);
  if (!place) return undefined;
  const inside: PlacePage['inside'] = [];
  for (
    let up = places.find((each) => each.id === place.parentId);
    up;
    up = places.find((each) => each.id === up?.parentId)
  ) {
    inside.unshift({ label: up.label, name: up.name });
  }
  const here = { stock: { placeId: place.id, quantity: { gt: 0 } } };
  const [containers, pieces] = await Promise.all([
    book.read.container.findMany({ where: here, select: judgeableSelect, take: MOST + 1, orderBy: { stockId: 'asc' } }),
    book.read.piece.findMany({ where: here, select: pieceSelect, take: MOST + 1, orderBy: { stockId: 'asc' } }),
  ]);
  return {
    place,
    inside,
    children: places.filter((each) => each.parentId === place.id),
    containers: containers.slice(0, MOST).map(containerLine),
    pieces: pieces.slice(0, MOST).map(pieceLine),
    more: containers.length > MOST || pieces.length > MOST,
  };
}
