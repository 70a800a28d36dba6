import { Type } from 'typebox';
import { binEntry, decision, door, everything, restoreAnswer, season, status } from '../schemas/answers.ts';
import { exact, told } from '../schemas/basics.ts';
import { fileOf, listOf } from './answers.ts';
import { add, begin, get, named, post, remove } from './operation.ts';
import { BUSY, LOOKING_AT_ONE, TOO_OFTEN } from './refusals.ts';

const unpaired = told(exact({ unpaired: Type.Literal(true) }), 'It gives the code again to come back.');

export const homeOperations = {
	...named('home', {
		getStatus: get('/api/status', 'Counts, and what start-up mended', status),
		listenToEvents: get(
			'/api/events',
			'Hear what is read and changed, as server-sent events',
			fileOf('text/event-stream', 'Events "photo" and "changed".'),
		),
		loadDemo: add('/api/demo', 'Load the made-up wardrobe beside your own', season),
		getEverything: get('/api/everything.json', 'All that is kept, but for the pictures', everything),
		getBackup: get(
			'/api/backup',
			'Everything in one archive',
			fileOf('application/x-tar', 'An archive for "dyelot restore".'),
			{ also: BUSY },
		),
		restoreBackup: begin(
			'/api/restore',
			'Start anew over an archive, sent as application/x-tar; what is kept now is set aside',
			restoreAnswer,
			{ also: BUSY },
		),
	}),
	...named('decisions', {
		listDecisions: get('/api/decisions', 'The last hundred decisions, newest first', listOf(decision)),
		undo: post('/api/undo', 'Take back the newest decision', decision),
		redo: post('/api/redo', 'Do again what was taken back last', decision),
		listBin: get('/api/bin', 'What lies in the bin; it stays 90 days', listOf(binEntry)),
		restoreFromBin: post(
			'/api/bin/:id/restore',
			'Take an entry out of the bin',
			told(exact({ restored: Type.Literal(true) }), 'It is back.'),
		),
	}),
	...named('devices', {
		pairDevice: post(
			'/api/pair',
			'Let this device in by the code shown on the computer',
			told(exact({ paired: Type.Literal(true) }), 'The answer sets a cookie.'),
			{ body: exact({ code: Type.String({ maxLength: 40 }) }), also: TOO_OFTEN },
		),
		listDevices: get('/api/devices', 'How devices get in, and those that are; on this computer only', door, {
			also: LOOKING_AT_ONE,
		}),
		unpairDevice: remove('/api/devices/:id', 'Send a device away; on this computer only', unpaired),
		unpairDevices: remove('/api/devices', 'Send all devices away; on this computer only', unpaired),
	}),
};
