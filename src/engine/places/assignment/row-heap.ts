/** A binary heap of rows by key, the smallest on top, among equal keys the later row. */
export class RowHeap {
  private readonly entries: { readonly row: number; readonly key: number }[] = [];

  top(): { readonly row: number; readonly key: number } | undefined {
    return this.entries[0];
  }

  push(row: number, key: number): void {
    const added = { row, key };
    let index = this.entries.length;
    this.entries.push(added);
    for (let above = (index - 1) >> 1; index > 0; above = (index - 1) >> 1) {
      const parent = this.entries[above];
      if (parent === undefined || !comesBefore(added, parent)) break;
      this.entries[index] = parent;
      index = above;
    }
    this.entries[index] = added;
  }

  pop(): void {
    const last = this.entries.pop();
    if (last === undefined || this.entries.length === 0) return;
    let index = 0;
    for (let below = this.smallerChild(index); below !== undefined; below = this.smallerChild(index)) {
      const child = this.entries[below];
      if (child === undefined || !comesBefore(child, last)) break;
      this.entries[index] = child;
      index = below;
    }
    this.entries[index] = last;
  }

  private smallerChild(index: number): number | undefined {
    const left = this.entries[2 * index + 1];
    const right = this.entries[2 * index + 2];
    if (left === undefined) return undefined;
    return right !== undefined && comesBefore(right, left) ? 2 * index + 2 : 2 * index + 1;
  }
}

interface Entry {
  readonly row: number;
  readonly key: number;
}

function comesBefore(one: Entry, other: Entry): boolean {
  return one.key < other.key || (one.key === other.key && one.row > other.row);
}
