import type { ENGLISH } from './catalogue.ts';
import type { SomeKeys } from './same-keys.ts';

/** What American English says otherwise; everything else is British English. */
export const AMERICAN: SomeKeys<typeof ENGLISH> = {
	kinds: {
		jumper: 'sweater',
		waistcoat: 'vest',
		trousers: 'pants',
		trainers: 'sneakers',
		jewellery: 'jewelry',
	},
	basicColours: { grey: 'gray' },
	slots: { bottom: 'pants and skirts' },
};
