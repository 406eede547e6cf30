/** All subsets of one size, in the order of the list. */
export function* subsets<T>(list: readonly T[], size: number, from = 0): Generator<readonly T[]> {
  if (size === 0) {
    yield [];
    return;
  }
  for (let index = from; index <= list.length - size; index += 1) {
    for (const rest of subsets(list, size - 1, index + 1)) yield [...list.slice(index, index + 1), ...rest];
  }
}
