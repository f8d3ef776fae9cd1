import { useState } from 'react';
import { OrderView } from '../views/order/order-view.tsx';
import { useSession } from '../views/use-session.ts';
import { loadFault } from './load-fault.ts';

/** The order list, wired to this browser's files. */
export function OrderDoor() {
  const session = useSession();
  const [why, setWhy] = useState<string>();
  const save = async (ending: 'dxf' | 'svg'): Promise<void> => {
    // The sheets are not needed to look at the list.
    const { saveSheet } = await import('./save-sheet.ts');
    await saveSheet(session, { sheet: 'template', paper: 'a4', units: session.plan.units }, ending);
  };
  const onSave = (ending: 'dxf' | 'svg'): void => {
    save(ending).then(
      () => setWhy(undefined),
      (error: unknown) =>
        setWhy(`The part that writes the templates ${loadFault(error)} Save again to try again.`),
    );
  };
  return (
    <>
      <OrderView onSave={onSave} />
      {why !== undefined && (
        <p className="page-stub type-small" role="alert">
          {why}
        </p>
      )}
    </>
  );
}
