import { textField } from '../forms/field.ts';

export const pairForm = { name: textField({ label: 'Name of this device', hint: 'For instance “phone at the mill”', most: 60 }) };
