import { createHash, randomBytes } from 'node:crypto';

/** A secret that a browser keeps: 256 random bits. */
export const newToken = (): string => randomBytes(32).toString('base64url');

/** What is stored of it: whoever reads that cannot come in with it. */
export const hashOfToken = (token: string): string => createHash('sha256').update(token).digest('hex');
