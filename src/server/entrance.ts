import type { FastifyInstance, FastifyRequest } from 'fastify';
import type { UserError } from '../app/errors.ts';
import type { Services } from '../app/services.ts';
import { PAGE_ADDRESSES } from './open-routes.ts';
import { deviceRoutes } from './routes/devices.ts';
import type { ServicesOf } from './services-of.ts';
import type { Page } from './static-page.ts';
import type { App } from './typed-app.ts';
import { guardRoutes, isLetIn } from './who-may-come-in.ts';

/** How requests come in: under which names, who may ask, and which home answers. */
export type Entrance = {
	/** Names by which the program is reached beside those of this computer, lower case. */
	readonly names: () => readonly string[];
	/** Refuses whoever may not come in; before any route. */
	readonly guard: (app: FastifyInstance) => void;
	/** Routes that only this entrance has. */
	readonly routes: (app: App) => void;
	readonly servicesOf: ServicesOf;
	/** The page, and its addresses beside those that every form has. */
	readonly page: Page;
	/** What an error means for whoever asked, where only this entrance knows it. */
	readonly meaningOf: (error: unknown) => UserError | null;
	/** Browsers come over an encrypted line, and are told to come over no other. */
	readonly isEncrypted: boolean;
	/** Addresses that are answered under any name. */
	readonly namelessAddresses: ReadonlySet<string>;
	/** Photos on their way: who counts as one, and how many may be of all together. */
	readonly uploads: { readonly whoOf: (request: FastifyRequest) => string; readonly mostOfAll: number };
	/** Whether who asked some time ago may still hear the answer, now. */
	readonly isStillLetIn: (request: FastifyRequest) => Promise<boolean>;
};

/** One home, for the person at this computer and for the devices that they paired. */
export function ownEntrance(services: Services): Entrance {
	const { sharing } = services;
	return {
		names: () => sharing?.names() ?? [],
		guard: (app) => guardRoutes(app, sharing),
		routes: (app) => deviceRoutes(app, services),
		servicesOf: () => services,
		page: { isHosted: false, addresses: PAGE_ADDRESSES },
		meaningOf: () => null,
		isEncrypted: false,
		namelessAddresses: new Set(),
		uploads: { whoOf: (request) => request.ip, mostOfAll: 8 },
		isStillLetIn: async (request) => isLetIn(request, sharing),
	};
}
