import { keptWords } from '../language/kept-sentence.ts';

/** What a browser's own description says of the device, first match wins (common practice, no source: these words are in it by habit). */
const DEVICES: readonly (readonly [RegExp, () => string])[] = [
	[/iphone/i, () => 'iPhone'],
	[/ipad/i, () => 'iPad'],
	[/android.*mobile/i, () => keptWords('devices.androidPhone')],
	[/android/i, () => keptWords('devices.androidTablet')],
	[/windows/i, () => keptWords('devices.windows')],
	[/macintosh/i, () => 'Mac'],
	[/cros/i, () => 'Chromebook'],
	[/linux/i, () => keptWords('devices.linux')],
];

/** The kind of device in plain words, from a closed list; "another device" where its browser does not tell. */
export const deviceName = (userAgent: string | undefined): string =>
	(DEVICES.find(([sign]) => sign.test(userAgent ?? ''))?.[1] ?? (() => keptWords('devices.another')))();
