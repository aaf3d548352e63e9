import { Client } from 'pg';

/**
 * A connection that sends one query after another. Prisma sends several at once within a transaction; the driver queues
 * them too, but says that it will cease to.
 */
export class OneAtATimeClient extends Client {
  #last: Promise<unknown> = Promise.resolve();

  // The driver's own has a signature for every way to call it; this one stands for them all.
  override query(...asked: never[]): never {
    const ask = () => (super.query as (...args: unknown[]) => unknown).apply(this, asked);
    // The pool's own calls give a callback and await nothing.
    if (typeof asked.at(-1) === 'function') return ask() as never;
    const answer = this.#last.then(ask);
    this.#last = answer.catch(() => undefined);
    return answer as never;
  }
}
