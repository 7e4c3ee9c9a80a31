/**
 * Gives Node 20 the function `Object.groupBy`, which the engine of the embedded sheet calls; later versions and browsers have it.
 * Casts: Node's types already know the function.
 */
export function haveGroupBy(): void {
  (Object as any).groupBy ??= (items: Iterable<unknown>, keyOf: (item: unknown) => string) => {
    const groups: Record<string, unknown[]> = {};
    for (const item of items) (groups[keyOf(item)] ??= []).push(item);
    return groups;
  };
}
