import type { Command } from '@/app/_server/act';
import { writeEntry } from '@/app/_server/ledger/write-entry';
import { indexPiece } from '@/app/_server/stock/piece-fields';
import { refuseFlitchNumber } from '@/app/_server/stock/refuse-flitch-number';
import { err, ok } from '@/shared/result/result';
import { speciesById } from '@/shared/wood/all-species';

/** Which of the known woods a piece is: its name takes the place of a word that could mean several. */
export type NameWood = { label: string; speciesId: string };

/** Calls a piece, and whatever of its flitch had the same word, by the name of the wood: one log is one species. */
export const nameWood: Command<NameWood, { label: string; species: string; pieces: number }> = (book, by, input) =>
  writeEntry(book, { ...by, kind: 'piece-changed', request: input }, async (pen) => {
    const { label } = input;
    const species = speciesById(input.speciesId)?.name;
    const piece = await pen.tx.piece.findFirst({
      where: { stock: { label } },
      select: { stockId: true, species: true, flitch: true },
    });
    if (!piece || !species) return err({ code: 'not-found', facts: { label } });
    if (piece.species === species) return err({ code: 'changes-nothing' });
    const all = await pen.tx.piece.findMany({
      where: piece.flitch
        ? { species: piece.species, flitch: piece.flitch }
        : { stockId: piece.stockId, species: piece.species },
      orderBy: { stockId: 'asc' },
      select: { stockId: true, form: true, flitch: true, flitchNumber: true },
    });
    for (const { stockId, form, flitch, flitchNumber } of all) {
      const first = flitchNumber ?? undefined;
      const taken = await refuseFlitchNumber(pen.tx, { form, species, flitch, first, count: 1, stockId });
      if (taken) return err(taken);
    }
    const answer = { label, species, pieces: all.length };
    const others = all.length > 1 ? `, with ${all.length - 1} more of its flitch` : '';
    await pen.enter({ stockId: piece.stockId, why: `Species: ${piece.species} → ${species}${others}.` }, answer);
    const ids = all.map(({ stockId }) => stockId);
    await pen.tx.entryAlso.createMany({
      data: ids.filter((stockId) => stockId !== piece.stockId).map((stockId) => ({ stockId, entryId: pen.entryId })),
    });
    await pen.tx.piece.updateMany({ where: { stockId: { in: ids } }, data: { species } });
    for (const stockId of ids) await indexPiece(pen.tx, { stockId });
    return ok(answer);
  });
