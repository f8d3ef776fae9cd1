import { type ComponentType, lazy, type ReactNode, Suspense } from 'react';

interface Failing {
  readonly message: string;
}

/** A part of the page that loads when it is first shown; where it cannot, its place says so. */
export function later<Props extends object>(
  name: string,
  load: () => Promise<ComponentType<Props>>,
  opening: ReactNode = <p className="page-stub type-small base-soft">Opening the {name}.</p>,
): ComponentType<Props> {
  const Part = lazy(async () => {
    try {
      return { default: await load() };
    } catch (error) {
      const why = error instanceof Error ? error.message : String((error as Failing).message);
      const Failed: ComponentType<Props> = () => (
        <p className="page-stub type-small">
          The {name} could not be loaded: {why} Everything else goes on in the form.
        </p>
      );
      return { default: Failed };
    }
  });
  return function Later(props: Props) {
    return (
      <Suspense fallback={opening}>
        <Part {...props} />
      </Suspense>
    );
  };
}
