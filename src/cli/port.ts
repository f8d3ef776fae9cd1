import { createServer } from 'node:net';
import { Refused } from './exit.ts';
import { HOST } from './serve.ts';
import { systemFault } from './system-fault.ts';

/** Where the page is served when no port is named. */
const USUAL = 4178;

const MOST = 65_535;

/** The port that the environment names. Refuses what is no port. */
export function portOf(text: string | undefined): number {
  if (text === undefined || text === '') return USUAL;
  const port = /^\d+$/.test(text) ? Number(text) : Number.NaN;
  if (port <= MOST) return port;
  throw new Refused(
    `PORT cannot be “${text}”; it takes a whole number from 0 to ${MOST}, as in PORT=4179 npm start.`,
  );
}

/**
 * Refuses a port at which the page cannot be served. No other is taken in its place: to the browser that would be
 * another site, where the plans it keeps are out of sight.
 */
export const checkPort = (port: number): Promise<void> =>
  new Promise((done, fail) => {
    const trial = createServer();
    trial.once('error', (error) => fail(portRefusal(port, error)));
    trial.listen(port, HOST, () => trial.close(() => done()));
  });

/** Why a port cannot be had. */
export const portRefusal = (port: number, error: unknown): Refused =>
  new Refused(
    `Port ${port} cannot be used: ${systemFault(error, {
      EADDRINUSE: 'another program uses it, perhaps a Sternmount already started',
      EACCES: 'it is kept for the system',
    })}. With another, as in PORT=${port === MOST ? USUAL : port + 1} npm start, plans kept in the browser at this one are not shown.`,
  );
