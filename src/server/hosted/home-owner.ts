import type { FastifyRequest } from 'fastify';
import { UserError } from '../../app/errors.ts';
import { say } from '../../language/speak.ts';
import { roleIn } from '../../store/postgres/accounts/homes.ts';
import { noSuchAddress } from '../who-may-come-in.ts';
import type { HostedRoutes } from './hosted-routes.ts';

/** Refuses all but owners: a home's members in words, everybody else as if there were no such home. */
export async function requireOwner(
	{ host, comerOf }: Pick<HostedRoutes, 'host' | 'comerOf'>,
	request: FastifyRequest,
	home: string,
): Promise<void> {
	const role = await roleIn(host.accounts, home, comerOf(request).person.id);
	if (role === null) throw noSuchAddress(request);
	if (role !== 'own') throw new UserError('only-looking', say('hosting.onlyOwners'));
}
