/** Every address of the shop is built here. */
const query = (given: Readonly<Record<string, string>>): string => {
  const text = new URLSearchParams(given).toString();
  return text ? `?${text}` : '';
};

export const to = {
  today: '/',
  search: '/search',
  sums: '/sums',
  sum: (path: string, given: Readonly<Record<string, string>> = {}) => `/sums/${path}${query(given)}`,
  sumJson: (path: string, given: Readonly<Record<string, string>> = {}) => `/sums/${path}.json${query(given)}`,
  machines: '/machines',
  machineNew: '/machines/new',
  machine: (id: number) => `/machines/${id}`,
  drawer: '/drawer',
  tools: '/tools',
  devices: '/devices',
  deviceRevoke: (id: number) => `/devices/${id}/revoke`,
  pairingCodes: '/devices/code',
  pairingCode: (code: string) => `/devices/code/${code}`,
  pair: (code: string) => `/pair/${encodeURIComponent(code)}`,
  part: (id: number) => `/parts/${id}`,
  partSheet: (id: number) => `/parts/${id}/sheet`,
  /** The index sheet and the page at the machine take any operation of the routing; the latter counts the teeth of this one. */
  indexSheet: (operationId: number) => `/operations/${operationId}/index-sheet`,
  setUpSheet: (operationIds: readonly number[]) => `/set-ups/sheet?operations=${operationIds.join(',')}`,
  teeth: (operationId: number) => `/operations/${operationId}/teeth`,
  toothCut: (operationId: number) => `/operations/${operationId}/teeth/cut`,
  toothBack: (operationId: number) => `/operations/${operationId}/teeth/back`,
  item: (id: number) => `/drawer/${id}`,
  tool: (id: number) => `/tools/${id}`,
  shopMachine: (id: number) => `/tools/machines/${id}`,
  made: (id: number) => `/made/${id}`,
  operation: (id: number) => `/operations/${id}`,
  madeList: '/made',
  settings: '/settings',
  openShop: '/shop',
  asset: (name: string) => `/assets/${name}`,
} as const;
