import { say } from '../language/speak.ts';

/** What a browser's own description says of the device, first match wins (common practice, no source: these words are in it by habit). */
const DEVICES: readonly (readonly [RegExp, () => string])[] = [
	[/iphone/i, () => 'iPhone'],
	[/ipad/i, () => 'iPad'],
	[/android.*mobile/i, () => say('devices.androidPhone')],
	[/android/i, () => say('devices.androidTablet')],
	[/windows/i, () => say('devices.windows')],
	[/macintosh/i, () => 'Mac'],
	[/cros/i, () => 'Chromebook'],
	[/linux/i, () => say('devices.linux')],
];

/** The kind of device in plain words, from a closed list; "another device" where its browser does not tell. */
export const deviceName = (userAgent: string | undefined): string =>
	(DEVICES.find(([sign]) => sign.test(userAgent ?? ''))?.[1] ?? (() => say('devices.another')))();
