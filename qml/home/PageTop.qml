// Brings a page back to its top when it shows something else: what is new begins there. Put first into a page.
import QtQuick

Item {
    id: upper

    function show(): void {
        let item = upper.parent;
        while (item && !(item instanceof Flickable))
            item = item.parent;
        const flick = item as Flickable;
        if (flick)
            flick.contentY = 0;
    }
}
