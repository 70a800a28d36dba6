import { afterAll } from 'vitest';
import { removeTemporaryFolders } from './temporary-home.ts';

// Runs anew for each test file, unlike what the files import: they share their modules. Of all that is registered for the end this comes last.
afterAll(removeTemporaryFolders);
