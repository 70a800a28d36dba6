import { Type } from 'typebox';
import { binEntry, decision, door, everything, restoreAnswer, season, status } from '../schemas/answers.ts';
import { byId, exact, told } from '../schemas/basics.ts';
import { fileOf, listOf } from './answers.ts';
import { BUSY, LOOKING, LOOKING_AT_ONE, REFUSED, TOO_OFTEN } from './refusals.ts';

const tags = ['home'];
const decisionTags = ['decisions'];
const deviceTags = ['devices'];
const unpaired = told(exact({ unpaired: Type.Literal(true) }), 'It gives the code again to come back.');

export const homeOperations = {
	getStatus: {
		method: 'GET',
		url: '/api/status',
		schema: {
			operationId: 'getStatus',
			tags,
			summary: 'Counts, and what start-up mended',
			response: { 200: status, ...LOOKING },
		},
	},
	listenToEvents: {
		method: 'GET',
		url: '/api/events',
		schema: {
			operationId: 'listenToEvents',
			tags,
			summary: 'Hear what is read and changed, as server-sent events',
			response: { 200: fileOf('text/event-stream', 'Events "photo" and "changed".'), ...LOOKING },
		},
	},
	loadDemo: {
		method: 'POST',
		url: '/api/demo',
		schema: {
			operationId: 'loadDemo',
			tags,
			summary: 'Load the made-up wardrobe beside your own',
			response: { 201: season, ...REFUSED },
		},
	},
	getEverything: {
		method: 'GET',
		url: '/api/everything.json',
		schema: {
			operationId: 'getEverything',
			tags,
			summary: 'All that is kept, but for the pictures',
			response: { 200: everything, ...LOOKING },
		},
	},
	getBackup: {
		method: 'GET',
		url: '/api/backup',
		schema: {
			operationId: 'getBackup',
			tags,
			summary: 'Everything in one archive',
			response: { 200: fileOf('application/x-tar', 'An archive for "dyelot restore".'), ...LOOKING, ...BUSY },
		},
	},
	restoreBackup: {
		method: 'POST',
		url: '/api/restore',
		schema: {
			operationId: 'restoreBackup',
			tags,
			summary: 'Start anew over an archive, sent as application/x-tar; what is kept now is set aside',
			response: { 202: restoreAnswer, ...REFUSED, ...BUSY },
		},
	},
	listDecisions: {
		method: 'GET',
		url: '/api/decisions',
		schema: {
			operationId: 'listDecisions',
			tags: decisionTags,
			summary: 'The last hundred decisions, newest first',
			response: { 200: listOf(decision), ...LOOKING },
		},
	},
	undo: {
		method: 'POST',
		url: '/api/undo',
		schema: {
			operationId: 'undo',
			tags: decisionTags,
			summary: 'Take back the newest decision',
			response: { 200: decision, ...REFUSED },
		},
	},
	redo: {
		method: 'POST',
		url: '/api/redo',
		schema: {
			operationId: 'redo',
			tags: decisionTags,
			summary: 'Do again what was taken back last',
			response: { 200: decision, ...REFUSED },
		},
	},
	listBin: {
		method: 'GET',
		url: '/api/bin',
		schema: {
			operationId: 'listBin',
			tags: decisionTags,
			summary: 'What lies in the bin; it stays 90 days',
			response: { 200: listOf(binEntry), ...LOOKING },
		},
	},
	restoreFromBin: {
		method: 'POST',
		url: '/api/bin/:id/restore',
		schema: {
			operationId: 'restoreFromBin',
			tags: decisionTags,
			summary: 'Take a thing out of the bin',
			params: byId,
			response: { 200: told(exact({ restored: Type.Literal(true) }), 'It is back.'), ...REFUSED },
		},
	},
	pairDevice: {
		method: 'POST',
		url: '/api/pair',
		schema: {
			operationId: 'pairDevice',
			tags: deviceTags,
			summary: 'Let this device in by the code shown on the computer',
			body: exact({ code: Type.String({ maxLength: 40 }) }),
			response: {
				200: told(exact({ paired: Type.Literal(true) }), 'The answer sets a cookie.'),
				...REFUSED,
				...TOO_OFTEN,
			},
		},
	},
	listDevices: {
		method: 'GET',
		url: '/api/devices',
		schema: {
			operationId: 'listDevices',
			tags: deviceTags,
			summary: 'How devices get in, and those that are; on this computer only',
			response: { 200: door, ...LOOKING_AT_ONE },
		},
	},
	unpairDevice: {
		method: 'DELETE',
		url: '/api/devices/:id',
		schema: {
			operationId: 'unpairDevice',
			tags: deviceTags,
			summary: 'Send a device away; on this computer only',
			params: byId,
			response: { 200: unpaired, ...REFUSED },
		},
	},
	unpairDevices: {
		method: 'DELETE',
		url: '/api/devices',
		schema: {
			operationId: 'unpairDevices',
			tags: deviceTags,
			summary: 'Send all devices away; on this computer only',
			response: { 200: unpaired, ...REFUSED },
		},
	},
} as const;
