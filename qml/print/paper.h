// Blocks of text and drawing laid on sheets of paper, written as PDF. A block that fits on a page is never
// torn over two; each page carries a foot with its number.
// Not here: what the blocks say (handout.h, report.h).
#pragma once

#include <absl/status/status.h>

#include <QtCore/QMarginsF>
#include <QtCore/QString>
#include <QtGui/QPageSize>
#include <QtGui/QPdfWriter>
#include <memory>
#include <vector>

class QPainter;

namespace newel::print {

struct PaperOptions {
  QPageSize::PageSizeId size = QPageSize::A4;
  double body_pt = 11;  // 8 to 24; everything else follows it
  QString title;        // of the file
  QString foot;         // one line or two on every page, before the page number
};

// Something with a height that can be painted. Lengths are device pixels of the writer.
class PaperBlock {
 public:
  virtual ~PaperBlock() = default;
  // Called once, before painting; `device` gives the resolution.
  virtual double layOut(QPaintDevice& device, double width) = 0;
  // Paints the part [from, from + height) of the block with its top at the painter's origin.
  virtual void paint(QPainter& painter, double from, double height) = 0;
  // Where a block taller than a page may be cut at or before `at`, over `from`.
  virtual double cutBefore(double from, double at) const = 0;
};

class Paper {
 public:
  explicit Paper(PaperOptions options) : m_options(std::move(options)) {}

  // HTML that QTextDocument understands, at the body's size.
  void add(const QString& html);
  void add(std::unique_ptr<PaperBlock> block);
  void newPage();  // what follows begins a page
  // The block added last stays on one page with the beginning of the next, where there is room for both.
  void keepWithNext();

  // Write-new, flush, rename. kUnavailable when the file cannot be written.
  absl::Status write(const QString& file);
  int pages() const { return m_pages; }  // after write()

 private:
  struct Item {
    std::unique_ptr<PaperBlock> block;
    bool new_page = false;
    bool with_next = false;
  };
  struct Placed {
    int page;
    double y;
    double from;
    double height;
    PaperBlock* block;
  };

  void prepare(QPdfWriter& writer) const;
  std::vector<Placed> place(QPaintDevice& device, double width, double height);
  // What must fit on the page that `item` begins on: itself, and what it is kept with.
  double together(const std::vector<double>& heights, std::size_t item) const;

  PaperOptions m_options;
  std::vector<Item> m_items;
  bool m_next_on_new_page = false;
  int m_pages = 0;
};

// The font of all paper, in points: Noto Sans with its Arabic companion.
QFont paperFont(double points);

}  // namespace newel::print
