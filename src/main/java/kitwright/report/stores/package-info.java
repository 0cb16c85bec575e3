/**
 * What lies in the shop: the kit’s items, count sheets, tools, materials, cutting plans. Uses
 * {@code words}. Start with {@link kitwright.report.stores.KitTold}.
 */
@NullMarked
package kitwright.report.stores;

import org.jspecify.annotations.NullMarked;
