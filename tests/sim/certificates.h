// Three certificates that the simulated hub shows, made once for this: a new one for each run would write
// other bytes at each replay. Their keys were thrown away; there is no TLS here.
#pragma once

namespace newel::sim {

inline constexpr const char* kCertificates[3] = {R"(-----BEGIN CERTIFICATE-----
MIIBizCCATGgAwIBAgIUFDhIAAMcvQUBTvIgdWvwzWKOuWEwCgYIKoZIzj0EAwIw
GjEYMBYGA1UEAwwPc2ltdWxhdGVkIGh1YiAxMCAXDTI2MTEyNTIyMzkxOFoYDzIx
MjYxMTAxMjIzOTE4WjAaMRgwFgYDVQQDDA9zaW11bGF0ZWQgaHViIDEwWTATBgcq
hkjOPQIBBggqhkjOPQMBBwNCAARMRaIug18BQj/dW1L2DNbZwUrMuWWWVsKaUJ8/
xXiqdDrvTy59yhnJ/7INgK0xHVovDM5J9OaIaHfyVgFo5vE7o1MwUTAdBgNVHQ4E
FgQUatoDz48cPcGMTrZ5wIHYuhRGqDcwHwYDVR0jBBgwFoAUatoDz48cPcGMTrZ5
wIHYuhRGqDcwDwYDVR0TAQH/BAUwAwEB/zAKBggqhkjOPQQDAgNIADBFAiEAzdHM
JrQ8K74+WoczYTHHvOHG3Rjl8G3gy58x4hRL86sCIDbcLNSQPi3nNrFOissHSDWa
IBJC5U2ttoc60MlFt2tw
-----END CERTIFICATE-----
)",
                                                 R"(-----BEGIN CERTIFICATE-----
MIIBizCCATGgAwIBAgIUH+cjawz/Hh11P5PRe+XBkhZl66swCgYIKoZIzj0EAwIw
GjEYMBYGA1UEAwwPc2ltdWxhdGVkIGh1YiAyMCAXDTI2MTEyNTIyMzkxOFoYDzIx
MjYxMTAxMjIzOTE4WjAaMRgwFgYDVQQDDA9zaW11bGF0ZWQgaHViIDIwWTATBgcq
hkjOPQIBBggqhkjOPQMBBwNCAAQqvttetBOq7hp+U9ffLX2ITsPf7e+uOMCm7p51
/nAFqyfzdYRJ+aohHlZmq2YXdN1kRSDXds2QQ8Sqm3IRiIsDo1MwUTAdBgNVHQ4E
FgQUwypEul/GQeUWfYx+5iU4T7ZZS+UwHwYDVR0jBBgwFoAUwypEul/GQeUWfYx+
5iU4T7ZZS+UwDwYDVR0TAQH/BAUwAwEB/zAKBggqhkjOPQQDAgNIADBFAiEA3gy3
OHWwwGrumD9OHPJcraTlzLoeq9rnD7DCKCSMbFsCIA83ZYLUDZDcAV1WjRG4h//g
xs15qvJnctOiCgPEshzI
-----END CERTIFICATE-----
)",
                                                 R"(-----BEGIN CERTIFICATE-----
MIIBizCCATGgAwIBAgIUPsCGWRsXYi1XxpFq5owNhQ8dPGMwCgYIKoZIzj0EAwIw
GjEYMBYGA1UEAwwPc2ltdWxhdGVkIGh1YiAzMCAXDTI2MTEyOTIxMTM1NFoYDzIx
MjYxMTA1MjExMzU0WjAaMRgwFgYDVQQDDA9zaW11bGF0ZWQgaHViIDMwWTATBgcq
hkjOPQIBBggqhkjOPQMBBwNCAAQUd3BZz+GrMdo7BtJ1HwhH3HZEAedVFR9OAvY5
ZJ0hJQa/C9kGMaO2AgvMRuQvfwc4izrCoqfFaRYkU8oSXT2do1MwUTAdBgNVHQ4E
FgQU9Ujtnaq3wIuYG1NMKbo6bvV5FFMwHwYDVR0jBBgwFoAU9Ujtnaq3wIuYG1NM
Kbo6bvV5FFMwDwYDVR0TAQH/BAUwAwEB/zAKBggqhkjOPQQDAgNIADBFAiEA5Vez
pC6RmnzXpmdVm0/baNxxssVihPc2yyIM1wBZdDcCICA4aWlk9kejW3JCqpS4/fe7
cqjyKJBY6DJeg4zUXTEw
-----END CERTIFICATE-----
)"};

}  // namespace newel::sim
