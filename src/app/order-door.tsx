import { OrderView } from '../views/order/order-view.tsx';
import { useSession } from '../views/use-session.ts';
import { download } from './keep/download.ts';
import { planFileName } from './keep/plan-file-name.ts';

/** The order list, wired to this browser's files. */
export function OrderDoor() {
  const session = useSession();
  return (
    <OrderView
      onSave={(ending, text) =>
        download(
          planFileName(session.plan.title).replace(/\.plan\.json$/, `-templates.${ending}`),
          new Blob([text], { type: ending === 'dxf' ? 'image/vnd.dxf' : 'image/svg+xml' }),
        )
      }
    />
  );
}
