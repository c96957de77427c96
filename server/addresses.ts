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
  pairing: '/devices',
  openShop: '/shop',
  asset: (name: string) => `/assets/${name}`,
} as const;
