import { useShop } from '../api/use-shop.js';
import { RequestPart } from '../features/request/request-part.js';
import { Asked } from '../parts/asked.js';
import { RoomTitle } from '../parts/room-title.js';
import styles from './request-page.module.css';

/** What a player asks for, answered as it is typed. */
export function RequestPage() {
  return (
    <Asked question={useShop()} what="the shop">
      {(shop) => (
        <>
          <div className={styles.head}>
            <RoomTitle title="Request" />
            <p className="quiet">
              Say what the player has, likes and wishes; the sets follow at once, from what this shop can
              make.
            </p>
          </div>
          <RequestPart shop={shop} />
        </>
      )}
    </Asked>
  );
}
