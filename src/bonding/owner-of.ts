/** The part that a joint without a name of its own belongs to: `c1:E1` is of c1. Any other id stays as it is. */
export function ownerOf(id: string): string {
  return id.split(':')[0]!;
}
