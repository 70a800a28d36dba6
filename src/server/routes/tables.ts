import type { FastifyInstance } from 'fastify';
import { Type } from 'typebox';
import { UserError } from '../../app/errors.ts';
import type { Services } from '../../app/services.ts';
import { importGarments } from '../../app/tables/import-garments.ts';
import { importWears } from '../../app/tables/import-wears.ts';
import { askedBy } from '../asked.ts';
import { BODY_LIMITS } from '../body-limits.ts';

const ofTable = {
	bodyLimit: BODY_LIMITS.table,
	schema: { querystring: Type.Object({ preview: Type.Boolean({ default: false }) }) },
};
type OfTable = { Body: unknown; Querystring: { preview: boolean } };

function tableIn(body: unknown): Uint8Array {
	if (Buffer.isBuffer(body)) return body;
	throw new UserError('bad-request', 'Expected a table as text/csv for an import; received something else.');
}

/** Tables that come in: shown first with `preview`, then taken as one decision. */
export function tableRoutes(app: FastifyInstance, services: Services): void {
	// Bytes, not text: which encoding they are in is found out first.
	app.addContentTypeParser('text/csv', { parseAs: 'buffer' }, (_request, body, done) => done(null, body));
	app.post<OfTable>('/api/garments/import', ofTable, async (request) =>
		importGarments(services, askedBy(request), tableIn(request.body), request.query),
	);
	app.post<OfTable>('/api/wears/import', ofTable, async (request) =>
		importWears(services, askedBy(request), tableIn(request.body), request.query),
	);
}
