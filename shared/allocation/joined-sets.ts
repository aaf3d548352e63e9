/** Sets that grow together: `join` makes two members one set, `of` names a set by one of its members. */
export class JoinedSets {
  readonly #above: number[];

  constructor(count: number) {
    this.#above = Array.from({ length: count }, (_, nr) => nr);
  }

  of(member: number): number {
    let at = member;
    for (;;) {
      const above = this.#above[at] ?? at;
      if (above === at) return at;
      this.#above[at] = this.#above[above] ?? above;
      at = above;
    }
  }

  join(one: number, other: number): void {
    const [a, b] = [this.of(one), this.of(other)];
    if (a !== b) this.#above[Math.max(a, b)] = Math.min(a, b);
  }

  /** Every set with its members in order, the sets in the order of their first members. */
  all(): number[][] {
    const sets = new Map<number, number[]>();
    for (const member of this.#above.keys()) {
      const set = this.of(member);
      sets.set(set, [...(sets.get(set) ?? []), member]);
    }
    return [...sets.values()];
  }
}
