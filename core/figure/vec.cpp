#include "core/figure/vec.h"

#include <array>

namespace newel {
namespace {

using Quaternion = std::array<double, 4>;  // w, x, y, z

Quaternion quaternionOf(const Turn& t) {
  const double trace = t.x.x + t.y.y + t.z.z;
  if (trace > 0) {
    const double s = 2 * std::sqrt(trace + 1);
    return {s / 4, (t.y.z - t.z.y) / s, (t.z.x - t.x.z) / s, (t.x.y - t.y.x) / s};
  }
  if (t.x.x > t.y.y && t.x.x > t.z.z) {
    const double s = 2 * std::sqrt(1 + t.x.x - t.y.y - t.z.z);
    return {(t.y.z - t.z.y) / s, s / 4, (t.y.x + t.x.y) / s, (t.z.x + t.x.z) / s};
  }
  if (t.y.y > t.z.z) {
    const double s = 2 * std::sqrt(1 + t.y.y - t.x.x - t.z.z);
    return {(t.z.x - t.x.z) / s, (t.y.x + t.x.y) / s, s / 4, (t.z.y + t.y.z) / s};
  }
  const double s = 2 * std::sqrt(1 + t.z.z - t.x.x - t.y.y);
  return {(t.x.y - t.y.x) / s, (t.z.x + t.x.z) / s, (t.z.y + t.y.z) / s, s / 4};
}

Turn turnOf(const Quaternion& q) {
  const auto [w, x, y, z] = q;
  return {{1 - 2 * (y * y + z * z), 2 * (x * y + w * z), 2 * (x * z - w * y)},
          {2 * (x * y - w * z), 1 - 2 * (x * x + z * z), 2 * (y * z + w * x)},
          {2 * (x * z + w * y), 2 * (y * z - w * x), 1 - 2 * (x * x + y * y)}};
}

}  // namespace

Turn between(const Turn& a, const Turn& b, double share) {
  const Quaternion p = quaternionOf(a);
  Quaternion q = quaternionOf(b);
  double cosine = p[0] * q[0] + p[1] * q[1] + p[2] * q[2] + p[3] * q[3];
  if (cosine < 0) {
    cosine = -cosine;
    for (double& part : q) part = -part;
  }
  double from = 1 - share;
  double to = share;
  if (cosine < 0.999999) {
    const double angle = std::acos(cosine);
    from = std::sin(from * angle) / std::sin(angle);
    to = std::sin(to * angle) / std::sin(angle);
  }
  Quaternion r{};
  double size = 0;
  for (std::size_t i = 0; i < r.size(); ++i) {
    r[i] = from * p[i] + to * q[i];
    size += r[i] * r[i];
  }
  size = std::sqrt(size);
  for (double& part : r) part /= size;
  return turnOf(r);
}

}  // namespace newel
