import type { House } from '#house';

export const lengthUnit = ({ units }: House): string => (units === 'customary' ? 'ft, in' : 'm');

export const massUnit = ({ units }: House): string => (units === 'customary' ? 'lb' : 'kg');
