/** Native charts, fed by columns of cells. */
package frillbook.chart;
