import { say } from '../../../src/language/speak.ts';
import type { STATIONS } from '../../../src/wardrobe/season/stations.ts';

/** What a page is for, in one or two sentences: said while its content is still on the way, too. */
export const purposeOf = (place: (typeof STATIONS)[number] | 'garments'): string => say(`purposes.${place}`);
