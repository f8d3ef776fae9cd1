import { CURRENT_VERSION } from '../../plan/file/migrations.ts';
import type { World } from './world.ts';

/** What windows tell each other after a save. */
export interface News {
  readonly plan: string;
  readonly serial: number;
  readonly schema: number;
  readonly when: number;
}

export interface NewsLine {
  readonly tell: (news: Omit<News, 'schema'>) => void;
  readonly close: () => void;
}

const isNews = (data: unknown): data is News => {
  if (typeof data !== 'object' || data === null) return false;
  const { plan, serial, schema, when } = data as Record<string, unknown>;
  return (
    typeof plan === 'string' &&
    typeof serial === 'number' &&
    typeof schema === 'number' &&
    typeof when === 'number'
  );
};

/** Hears what other windows save, and tells them what this one does. */
export function newsLine({ channel }: Pick<World, 'channel'>, heard: (news: News) => void): NewsLine {
  const line = channel?.('sternmount-plans');
  line?.addEventListener('message', ({ data }) => {
    if (isNews(data)) heard(data);
  });
  return {
    tell: (news) => line?.postMessage({ ...news, schema: CURRENT_VERSION }),
    close: () => line?.close(),
  };
}
