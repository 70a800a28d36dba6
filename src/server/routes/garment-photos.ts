import { joinGarments } from '../../app/decisions/join-garments.ts';
import { partGarment } from '../../app/decisions/part-garment.ts';
import { splitGarment } from '../../app/decisions/split-garment.ts';
import { askedBy } from '../asked.ts';
import { garmentOperations as operations } from '../operations/garments.ts';
import type { ServicesOf } from '../services-of.ts';
import type { App } from '../typed-app.ts';

/** Which photos show which garment: several entries joined into one, a photo that shows two cut apart, a photo given to another garment. */
export function garmentPhotoRoutes(app: App, servicesOf: ServicesOf): void {
	app.route({
		...operations.mergeGarments,
		handler: (request) => joinGarments(servicesOf(request), askedBy(request), request.body),
	});
	app.route({
		...operations.splitGarment,
		handler: (request) => splitGarment(servicesOf(request), askedBy(request), request.params.id, request.body),
	});
	app.route({
		...operations.partGarment,
		handler: (request) => partGarment(servicesOf(request), askedBy(request), request.params.id, request.body),
	});
}
