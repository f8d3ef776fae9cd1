import { OrderView } from '../views/order/order-view.tsx';
import { useSession } from '../views/use-session.ts';

/** The order list, wired to this browser's files. */
export function OrderDoor() {
  const session = useSession();
  return (
    <OrderView
      onSave={async (ending) => {
        // The sheets are not needed to look at the list.
        const { saveSheet } = await import('./save-sheet.ts');
        await saveSheet(session, { sheet: 'template', paper: 'a4', units: session.plan.units }, ending);
      }}
    />
  );
}
