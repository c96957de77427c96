/** Rows by the operation that they belong to, each in the order given. */
export function ownRows<T extends { readonly operation_id: number }>(rows: readonly T[]): (operationId: number) => readonly T[] {
  const byId = new Map<number, T[]>();
  for (const row of rows) {
    const own = byId.get(row.operation_id);
    if (own) own.push(row);
    else byId.set(row.operation_id, [row]);
  }
  return (operationId) => byId.get(operationId) ?? [];
}
