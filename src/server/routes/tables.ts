import { UserError } from '../../app/errors.ts';
import { importGarments } from '../../app/tables/import-garments.ts';
import { importWears } from '../../app/tables/import-wears.ts';
import { say } from '../../language/speak.ts';
import { askedBy } from '../asked.ts';
import { BODY_LIMITS } from '../body-limits.ts';
import { garmentOperations } from '../operations/garments.ts';
import { wearOperations } from '../operations/wears.ts';
import type { ServicesOf } from '../services-of.ts';
import type { App } from '../typed-app.ts';

function tableIn(body: unknown): Uint8Array {
	if (Buffer.isBuffer(body)) return body;
	throw new UserError('bad-request', say('serverWords.noTable'));
}

/** Tables that come in: shown first with `preview`, then taken as one decision. */
export function tableRoutes(app: App, servicesOf: ServicesOf): void {
	// Bytes, not text: which encoding they are in is found out first.
	app.addContentTypeParser('text/csv', { parseAs: 'buffer' }, (_request, body, done) => done(null, body));
	const bodyLimit = BODY_LIMITS.table;
	app.route({
		...garmentOperations.importGarments,
		bodyLimit,
		handler: async (request) =>
			importGarments(servicesOf(request), askedBy(request), tableIn(request.body), request.query),
	});
	app.route({
		...wearOperations.importWears,
		bodyLimit,
		handler: async (request) =>
			importWears(servicesOf(request), askedBy(request), tableIn(request.body), request.query),
	});
}
