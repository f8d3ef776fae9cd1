import { type ComponentType, type FunctionComponent, lazy, useContext } from 'react';
import { Attempt } from './attempt.ts';

/**
 * A part of the page that loads when it is first shown. One that failed to load stays failed for as long as the attempt
 * is the same; another attempt loads it anew.
 */
export function part<P extends object>(load: () => Promise<ComponentType<P>>): FunctionComponent<P> {
  const views = new Map<number, ComponentType<P>>();
  return function Part(props: P) {
    const attempt = useContext(Attempt);
    const View = views.get(attempt) ?? (lazy(async () => ({ default: await load() })) as ComponentType<P>);
    views.set(attempt, View);
    return <View {...props} />;
  };
}
