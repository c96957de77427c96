/** Why a change may not come from where it says it comes from; null when it may. Compares Origin (else Referer) with Host. */
export function originProblem(headers: { readonly host?: string; readonly origin?: string; readonly referer?: string }): string | null {
  const from = headers.origin ?? headers.referer;
  if (!from) return 'A change has to say which page it came from; this one did not.';
  try {
    const { host } = new URL(from);
    return host !== '' && host === (headers.host ?? '').toLowerCase() ? null : 'This change came from a page of another server.';
  } catch {
    return 'This change came from a page whose address cannot be read.';
  }
}
